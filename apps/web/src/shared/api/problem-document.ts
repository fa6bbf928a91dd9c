import type { Problem } from '@standstill/workshop';

/** What the server says when it refuses: RFC 9457, with the places in the document where it has them. */
export interface ProblemDocument {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail: string;
  readonly problems: readonly Problem[];
}

/** Reads an answer that is not a success; an answer that is no problem document gets a plain one. */
export async function readProblemDocument(response: Response): Promise<ProblemDocument> {
  const body: unknown = await response.json().catch(() => null);
  const fields = typeof body === 'object' && body !== null ? (body as Record<string, unknown>) : {};
  const title = text(fields['title'], `The server answered ${response.status}.`);
  return {
    type: text(fields['type'], 'about:blank'),
    title,
    status: response.status,
    detail: text(fields['detail'], title),
    problems: Array.isArray(fields['problems']) ? (fields['problems'] as Problem[]) : [],
  };
}

function text(value: unknown, otherwise: string): string {
  return typeof value === 'string' && value !== '' ? value : otherwise;
}
