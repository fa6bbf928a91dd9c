import type { JobDocument } from './document/job-document.ts';

export function newJobDocument(_title: string): JobDocument {
  throw new Error('not written yet');
}
