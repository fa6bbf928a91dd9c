import { sortedQuantile } from '@standstill/numerics';
import type { Estimate } from '../results/estimate.ts';

/**
 * A central value with the interval that 95 % of the draws fall into.
 *
 * Equation: low and high are the 2.5 % and 97.5 % quantiles of the draws, interpolated between order statistics
 *
 * @param value - result from the central inputs
 * @param draws - results of the draws; what is not a number counts for nothing
 * @returns the estimate; low and high are widened to hold the value where a lopsided spread leaves it outside
 */
export function intervalOf(value: number, draws: Float64Array): Estimate {
  const sorted = draws.filter((drawn) => Number.isFinite(drawn)).sort();
  if (sorted.length === 0) return { value, low: value, high: value };
  const low = sortedQuantile(sorted, 0.025);
  const high = sortedQuantile(sorted, 0.975);
  return { value, low: Math.min(low, value), high: Math.max(high, value) };
}
