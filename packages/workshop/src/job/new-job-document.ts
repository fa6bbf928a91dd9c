import type { JobDocument } from './document/job-document.ts';
import { newJobText } from './new-job-text.ts';
import { readJob } from './reading/read-job.ts';

/**
 * The document of `newJobText`, for programs that keep jobs as values.
 *
 * @param title - what the job is called
 * @returns a document of the newest version that `readJobDocument` accepts
 */
export function newJobDocument(title: string): JobDocument {
  const reading = readJob(newJobText(title), { file: 'new job', format: 'yaml' });
  if (!reading.ok)
    throw new TypeError(`the starting job can't be read: ${reading.problems[0]?.message ?? ''}`);
  return reading.document;
}
