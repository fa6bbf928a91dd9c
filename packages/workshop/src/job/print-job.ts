import type { JobDocument } from './document/job-document.ts';

export function printJob(_document: JobDocument, _format: 'yaml' | 'json'): string {
  throw new Error('not written yet');
}
