import type { Estimate } from '../results/estimate.ts';

/**
 * A central value with the interval that 95 % of the draws fall into.
 *
 * Equation: low and high are the 2.5 % and 97.5 % quantiles of the draws, interpolated between order statistics
 *
 * @param value - result from the central inputs
 * @param draws - results of the draws
 * @returns the estimate; low and high are widened to hold the value where a lopsided spread leaves it outside
 */
export function intervalOf(value: number, draws: Float64Array): Estimate {
  const sorted = Float64Array.from(draws).sort();
  const low = quantileOfSorted(sorted, 0.025);
  const high = quantileOfSorted(sorted, 0.975);
  return { value, low: Math.min(low, value), high: Math.max(high, value) };
}

function quantileOfSorted(sorted: Float64Array, share: number): number {
  const place = share * (sorted.length - 1);
  const below = sorted[Math.floor(place)] ?? NaN;
  const above = sorted[Math.ceil(place)] ?? NaN;
  return below + (place - Math.floor(place)) * (above - below);
}
