import { countedDistances } from '@standstill/logs';
import { mean, summarize } from '@standstill/numerics';
import type { RunSet } from '../sets/run-set.ts';
import { stopSetOf } from '../stop-set-of.ts';

/** How far single stops scatter, as measured. */
export interface MeasuredSpread {
  /** m. */
  readonly standardDeviation: number;
  readonly degreesOfFreedom: number;
  readonly stops: number;
  /** m. */
  readonly distance: number;
}

/**
 * The scatter of single stops within sets of one set-up, all sets together.
 *
 * Equation: s² = Σ (n_i − 1) s_i² / Σ (n_i − 1)
 * Assumes: all sets scatter alike; a trend within a set counts as scatter.
 *
 * @param sets - one for each set-up
 * @param nominalSpeed - m/s
 * @returns scatter and mean distance, m; null where no set has two stops that count
 */
export function measuredSpread(sets: readonly RunSet[], nominalSpeed: number): MeasuredSpread | null {
  const usable = sets
    .map((set) => countedDistances(stopSetOf(set, nominalSpeed), 'application', nominalSpeed).distances)
    .filter((distances) => distances.length >= 2);
  const degreesOfFreedom = usable.reduce((sum, { length }) => sum + length - 1, 0);
  if (degreesOfFreedom === 0) return null;
  const squares = usable.reduce(
    (sum, distances) => sum + (distances.length - 1) * summarize(distances).standardDeviation ** 2,
    0,
  );
  if (squares === 0) return null;
  return {
    standardDeviation: Math.sqrt(squares / degreesOfFreedom),
    degreesOfFreedom,
    stops: usable.reduce((sum, { length }) => sum + length, 0),
    distance: mean(usable.flat()),
  };
}
