import type { RunRole } from '../../job/document/run-schema.ts';
import type { JobRun } from '../../job/job.ts';

/** A log by its names, and what it is taken for where a person says so. */
interface NamedLog {
  readonly names: readonly string[];
  readonly role?: RunRole;
}

/**
 * The run of a job that a log belongs to: a run calls its log by the id under which it is kept or by its file, whatever
 * folder that lies in.
 *
 * @param runs - of the job
 * @param log - the log's names; its role where several runs call one log
 * @returns the run; null where no run calls the log
 */
export function runOfLog(runs: readonly JobRun[], { names, role }: NamedLog): JobRun | null {
  const exact = runs.filter(({ log }) => names.includes(log));
  const files = new Set(names.map(fileName));
  const found = exact.length > 0 ? exact : runs.filter(({ log }) => files.has(fileName(log)));
  return found.find((run) => role !== undefined && run.role === role) ?? found[0] ?? null;
}

function fileName(path: string): string {
  return path.split(/[\\/]/).at(-1) ?? path;
}
