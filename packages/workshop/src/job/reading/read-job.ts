import type { JobReading } from './job-reading.ts';
import { parseText } from './parse-text.ts';
import { problemOf } from './problem-of.ts';
import { readValue } from './read-value.ts';

export interface JobSource {
  /** Name of the file, for the errors. */
  readonly file: string;
  /** By the file's name where absent: `.json` is JSON, all else YAML. */
  readonly format?: 'yaml' | 'json';
}

/**
 * Reads a job file: a job with every value known, or every mistake in it with file, line and column.
 *
 * @param text - the file's text, YAML or JSON
 * @param source - name of the file, and its format where the name does not tell
 * @returns the job with what had to be assumed, or the mistakes, one problem each
 */
export function readJob(text: string, { file, format }: JobSource): JobReading {
  const parsed = parseText(text.replace(/^\uFEFF/, ''), format ?? (/\.json$/i.test(file) ? 'json' : 'yaml'));
  if (parsed.ok) return readValue(parsed.value, { file, locate: parsed.locate });
  const problems = parsed.findings.map((finding) => problemOf(finding, file, finding.position));
  return { ok: false, problems };
}
