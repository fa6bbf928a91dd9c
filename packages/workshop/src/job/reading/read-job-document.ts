import type { JobReading } from './job-reading.ts';

export function readJobDocument(_value: unknown): JobReading {
  throw new Error('not written yet');
}
