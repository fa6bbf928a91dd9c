import { readJob, readJobDocument } from '@standstill/workshop';
import type { JobDocument } from '@standstill/workshop';
import { RequestRefusal } from '../problems/request-refusal.ts';

/** A body that came as YAML: read with the places of its mistakes. */
export class YamlBody {
  readonly text: string;

  constructor(text: string) {
    this.text = text;
  }
}

/**
 * Reads the job document of a request.
 *
 * @param body - JSON values, or YAML text
 * @returns the document in the newest version, and its title
 * @throws RequestRefusal `job-invalid` with every mistake
 */
export function readDocument(body: unknown): { readonly document: JobDocument; readonly title: string } {
  const reading =
    body instanceof YamlBody ? readJob(body.text, { file: 'body', format: 'yaml' }) : readJobDocument(body);
  if (reading.ok) return { document: reading.document, title: reading.job.title };
  throw invalidJob(reading.problems);
}

/**
 * @param problems - every mistake of a job document
 * @returns the refusal that names the first and carries all
 */
export function invalidJob(problems: NonNullable<RequestRefusal['extras']['problems']>): RequestRefusal {
  const [first] = problems;
  const place = first?.line == null ? '' : `Line ${first.line}, column ${first.column ?? 1}: `;
  const more = problems.length > 1 ? ` ${problems.length - 1} more below.` : '';
  return new RequestRefusal('job-invalid', `${place}${first?.message ?? 'the job can not be read'}.${more}`, {
    problems,
  });
}
