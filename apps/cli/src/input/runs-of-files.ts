import { basename } from 'node:path';
import type { JobRun } from '@standstill/workshop';

/** The runs of a job that were logged in these files: a run names its log's file. */
export function runsOfFiles(runs: readonly JobRun[], files: readonly string[]): readonly JobRun[] {
  const names = new Set(files.map((file) => basename(file)));
  return runs.filter(({ log }) => names.has(basename(log)));
}
