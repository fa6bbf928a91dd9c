import type { JobReading } from './job-reading.ts';

export interface JobSource {
  /** Name of the file, for the errors. */
  readonly file: string;
  /** Guessed from the file's name where absent. */
  readonly format?: 'yaml' | 'json';
}

export function readJob(_text: string, _source: JobSource): JobReading {
  throw new Error('not written yet');
}
