import type { StopSetComparison } from '@standstill/logs';
import type { UnitSystem } from '@standstill/units';
import type { Job, JobSetUp } from '../job/job.ts';
import type { Change } from './change/change-explained.ts';
import type { FitOfStops } from './learn/fit-of-stops.ts';
import type { MeasuredStops } from './measured/measured-stops.ts';

/** What the sentences of a reconciliation are about. */
export interface Explained {
  readonly job: Job;
  readonly before: JobSetUp;
  readonly after: JobSetUp | null;
  /** The set-up after on the tires of the one before, where those differ; else the set-up after. */
  readonly brakesAlone: JobSetUp | null;
  /** m/s. */
  readonly speed: number;
  readonly measured: { readonly before: MeasuredStops; readonly after: MeasuredStops | null };
  readonly fit: FitOfStops;
  /** Whether the stops before fit the job within its spreads, and enough draws are left to say so. */
  readonly fits: boolean;
  readonly compared: StopSetComparison | null;
  readonly change: Change | null;
  readonly confounders: readonly string[];
  readonly units: UnitSystem;
}
