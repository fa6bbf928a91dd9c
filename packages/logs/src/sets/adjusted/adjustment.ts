import type { CovariateName, IntervalValue } from '../stop-set.ts';

/** What can be taken out of a difference beside the change. */
export type AdjustmentName =
  'run-order' | 'run-order-before' | 'run-order-after' | 'first-run' | CovariateName;

/** What one thing does to the distance. */
export interface AdjustmentEffect {
  readonly name: AdjustmentName;
  /** In `unit`: `first-run` what the first run of a set is longer, `direction` what a run out is longer than one back. */
  readonly effect: IntervalValue;
  readonly unit: 'm' | 'm per run' | 'm per m/s' | 'm per K';
}

/** Why something is not taken out of the difference. */
export interface NotAdjusted {
  readonly name: AdjustmentName;
  /**
   * `not-recorded`: written down for some of the stops only. `constant`: the same at all stops, so that it explains
   * nothing. `moves-with-change`: it changed when the set-up did, so that nobody can tell the two apart: the difference
   * may be its doing. `moves-with-others`: a mix of what is taken out already. `too-few-stops`: the stops don't carry
   * another term.
   */
  readonly why: 'not-recorded' | 'constant' | 'moves-with-change' | 'moves-with-others' | 'too-few-stops';
  /** What it moves with, where it does. */
  readonly movesWith: readonly (AdjustmentName | 'change')[];
}

/** The difference between two sets with something taken out that was not the change. */
export interface AdjustedDifference {
  /** m, after minus before, at the same run number and the same conditions. */
  readonly difference: IntervalValue;
  readonly takenOut: readonly AdjustmentEffect[];
  /** Whether the distance goes with the run order alike in both sets; `none` where run order is not taken out. */
  readonly slope: 'none' | 'common' | 'separate';
  /** Why one slope or two: the two differ beyond chance, they don't, or the stops don't carry two. */
  readonly slopeReason: 'differ' | 'alike' | 'too-few-stops' | 'no-run-order';
  /** Run number at which the difference holds where the slopes are separate; null where it holds at any. */
  readonly atRun: number | null;
  /** m, scatter of each set about the fit. */
  readonly residualStandardDeviation: { readonly before: number; readonly after: number };
  /** Of the difference's interval, by Welch and Satterthwaite, 1. */
  readonly degreesOfFreedom: number;
}

/** What a regression of both sets gives. */
export interface Adjustment {
  /** Null where nothing could be taken out. */
  readonly adjusted: AdjustedDifference | null;
  readonly notAdjusted: readonly NotAdjusted[];
}
