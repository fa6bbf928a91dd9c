import type { AdjustmentEffect, AdjustmentName } from './adjustment.ts';

/** A column of the regression. */
export interface AdjustmentTerm {
  readonly name: AdjustmentName;
  readonly unit: AdjustmentEffect['unit'];
  /** One for each stop, the stops before first; about their mean. */
  readonly column: readonly number[];
}
