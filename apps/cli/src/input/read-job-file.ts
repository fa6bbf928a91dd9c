import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { readJob, type JobReading } from '@standstill/workshop';
import { readFileBytes } from './read-file-bytes.ts';

/** Reads a job file; a folder stands for the `job.yaml` in it. */
export async function readJobFile(
  path: string,
): Promise<{ readonly file: string; readonly reading: JobReading }> {
  const file = jobFileIn(path);
  const text = new TextDecoder().decode(await readFileBytes(file));
  return { file, reading: readJob(text, { file }) };
}

function jobFileIn(path: string): string {
  const inside = join(path, 'job.yaml');
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() === true && existsSync(inside)
    ? inside
    : path;
}
