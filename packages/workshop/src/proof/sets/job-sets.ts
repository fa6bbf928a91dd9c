import type { JobRun } from '../../job/job.ts';
import type { LogReport } from '../../results/log-report.ts';
import type { RunSet } from './run-set.ts';

/** From which set-up to which. */
export interface SetUpChange {
  readonly against: string;
  readonly setUp: string;
}

/** The sets of a comparison, with all that the job says of them. `compareRuns` takes it as it is. */
export interface ComparedSets {
  readonly before: RunSet;
  readonly after: RunSet;
  /** The old set-up once more, after the new one. */
  readonly repeat?: RunSet;
  /** Another car that was left alone, driven beside the changed one. */
  readonly reference?: { readonly before: RunSet; readonly after: RunSet };
  /** m/s, as all runs say alike. */
  readonly nominalSpeed?: number;
  readonly warnings: readonly string[];
}

/** Stops driven one after the other with one set-up. */
export interface FadeRuns {
  /** Null where the job has no run for the logs. */
  readonly setUp: string | null;
  readonly set: RunSet;
}

/** What the logs of a job are for. */
export interface JobSets {
  /** Null where a side has no log. */
  readonly compared: ComparedSets | null;
  /** Each side by itself; null without a log. */
  readonly before: RunSet | null;
  readonly after: RunSet | null;
  /** Null where the runs and the job leave open which set-ups are meant, or one and the same is on both sides. */
  readonly change: SetUpChange | null;
  /** One for each set-up that has runs with the role `fade`. */
  readonly fades: readonly FadeRuns[];
  /** m/s; null where the runs say none or several. */
  readonly nominalSpeed: number | null;
  /** Logs of runs that belong to none of these sets. */
  readonly leftOver: readonly string[];
  readonly warnings: readonly string[];
}

/** A log with the run that it belongs to. */
export interface RunLog {
  readonly run: JobRun | null;
  readonly report: LogReport;
}
