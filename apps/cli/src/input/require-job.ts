import type { JobReading } from '@standstill/workshop';
import { problemLine } from '../print/problem-line.ts';
import { CommandError } from '../surface/command-error.ts';
import { exitCode } from '../surface/exit-code.ts';
import { readJobFile } from './read-job-file.ts';

export type SoundJob = Extract<JobReading, { ok: true }> & { readonly file: string };

/** Reads a job that must be sound: every mistake in it is one line of the error. */
export async function requireJob(path: string): Promise<SoundJob> {
  const { file, reading } = await readJobFile(path);
  if (reading.ok) return { ...reading, file };
  throw new CommandError(
    reading.problems.map((found) => problemLine(file, found)).join('\n'),
    exitCode.unreadable,
  );
}
