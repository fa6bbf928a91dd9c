import { statedConfounders } from '@standstill/workshop';
import type { Job, JobRun } from '@standstill/workshop';
import type { ComparedLog, ComparisonTask } from './calculations.ts';

/** What the runs of a job say about a comparison of their logs. */
export interface KnownFromRuns {
  /** What was different beside the set-up. */
  readonly confounders: readonly string[];
  /** m/s; null where the runs say none or several. */
  readonly nominalSpeed: number | null;
  /** The set-ups on either side; null where the runs name none, several or the same. */
  readonly change: { readonly setUp: string; readonly against: string } | null;
}

/**
 * Answers what the runs of a job say about two sets of logs, so that nobody has to say it twice or leaves it out.
 *
 * @param job - the job
 * @param task - the two sets
 * @returns what is known
 */
export function knownFromRuns(
  job: Job,
  { before, after }: Pick<ComparisonTask, 'before' | 'after'>,
): KnownFromRuns {
  const first = runsOf(job.runs, before.logs);
  const second = runsOf(job.runs, after.logs);
  const against = theOnly(first.map((run) => run.setUp));
  const setUp = theOnly(second.map((run) => run.setUp));
  const change = setUp === null || against === null || setUp === against ? null : { setUp, against };
  const nominalSpeed = theOnly([...first, ...second].map((run) => run.nominalSpeed?.value ?? null));
  return { confounders: statedConfounders(first, second), nominalSpeed, change };
}

function runsOf(runs: readonly JobRun[], logs: readonly ComparedLog[]): readonly JobRun[] {
  const names = new Set(logs.flatMap(({ id, file }) => [id, file.name]));
  return runs.filter((run) => names.has(run.log));
}

function theOnly<Value>(values: readonly (Value | null)[]): Value | null {
  return new Set(values).size === 1 ? (values[0] ?? null) : null;
}
