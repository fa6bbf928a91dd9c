import type { RunsPlan } from '@standstill/logs';
import type { MeasuredSpread } from './measured-spread.ts';
import type { PlannedCoolDown } from './planned-cool-down.ts';

/** What the words of a plan are made of. */
export interface ToldPlan {
  readonly needed: RunsPlan;
  /** Counted runs in each set as planned. */
  readonly runsPerSet: number;
  readonly warmUps: number;
  readonly withRepeat: boolean;
  /** All runs. */
  readonly runs: number;
  readonly cooling: PlannedCoolDown;
  /** m, about as long as a stop is. */
  readonly distance: number;
  /** m/s. */
  readonly speed: number;
  readonly measured: MeasuredSpread | null;
}
