import type { JobReading } from './job-reading.ts';
import { nowhere } from './position.ts';
import { readValue } from './read-value.ts';

/**
 * Reads a job that comes as plain values (an API body, a stored document) instead of text.
 *
 * @param value - a job document of any version
 * @returns the job, or every mistake in it
 */
export function readJobDocument(value: unknown): JobReading {
  return readValue(value, { file: null, locate: nowhere });
}
