import type { JobRun } from '../../job/job.ts';
import type { LogReport } from '../../results/log-report.ts';

/** The stops of one set-up: the reports of its logs in the order driven. */
export interface RunSet {
  readonly name: string;
  readonly reports: readonly LogReport[];
  /** What the job says of each of these logs, in the same order; null where it has no run for one. */
  readonly runs?: readonly (JobRun | null)[];
}

/**
 * The runs that the job has for the logs of a set.
 *
 * @param set - with its runs
 * @returns those that are there, in the order of the logs
 */
export function runsOf(set: Pick<RunSet, 'runs'>): readonly JobRun[] {
  return (set.runs ?? []).filter((run) => run !== null);
}
