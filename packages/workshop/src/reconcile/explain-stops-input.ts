import type { UnitSystem } from '@standstill/units';
import type { Job } from '../job/job.ts';
import type { LogReport } from '../results/log-report.ts';

/** Stops that were driven with one set-up. */
export interface DrivenSetUp {
  /** Id in the job. */
  readonly setUp: string;
  /** In run order; none for a set-up that is only proposed. */
  readonly reports: readonly LogReport[];
}

export interface ExplainStopsInput {
  readonly job: Job;
  readonly before: DrivenSetUp;
  /** Null or left out: only what the stops before say of the job. */
  readonly after?: DrivenSetUp | null;
  /** m/s; that of the reports where absent, else a round speed near that of the stops. */
  readonly nominalSpeed?: number | undefined;
  /** What is known to have differed besides the set-up, each as a text that begins with its kind, such as `tires: …`. */
  readonly confounders?: readonly string[];
  /** Draws from the job; four times as many are made in all. 600 where absent. */
  readonly draws?: number | undefined;
  /** Any whole number; 1 where absent. */
  readonly seed?: number | undefined;
  /** Of the sentences; `us` where absent. */
  readonly units?: UnitSystem | undefined;
}
