import type { JobSummary, StoredJob } from '@standstill/workshop';
import { readProblemDocument } from './problem-document.ts';
import { request, requestJson, ServerRefusal } from './request.ts';

const json = { 'content-type': 'application/json' };

/** All jobs, newest change first. */
export function listJobs(signal?: AbortSignal): Promise<readonly JobSummary[]> {
  return requestJson<{ jobs: readonly JobSummary[] }>('/jobs', signal ? { signal } : {}).then(
    (answer) => answer.jobs,
  );
}

/** One job with its document and version. */
export function getJob(id: string, signal?: AbortSignal): Promise<StoredJob> {
  return requestJson(`/jobs/${encodeURIComponent(id)}`, signal ? { signal } : {});
}

/** A new job from a document; the server gives it its id. */
export function createJob(document: unknown): Promise<StoredJob> {
  return requestJson('/jobs', { method: 'POST', headers: json, body: JSON.stringify(document) });
}

/** What came of a save: kept, or somebody else's version stands there. */
export type SaveAnswer =
  | { readonly kind: 'saved'; readonly job: StoredJob }
  | { readonly kind: 'conflict'; readonly theirs: StoredJob };

/** Replaces the document where nobody changed it since `version`; else brings the version that stands. */
export async function saveJob(id: string, version: number, document: unknown): Promise<SaveAnswer> {
  const response = await request(`/jobs/${encodeURIComponent(id)}`, {
    method: 'PUT',
    headers: { ...json, 'if-match': `"${version}"` },
    body: JSON.stringify(document),
  });
  if (response.status === 412) return { kind: 'conflict', theirs: await getJob(id) };
  if (!response.ok) throw new ServerRefusal(await readProblemDocument(response));
  return { kind: 'saved', job: (await response.json()) as StoredJob };
}
