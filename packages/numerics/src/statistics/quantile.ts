import { OutOfRangeError } from '../refuse/out-of-range-error.ts';
import { sortedQuantile } from './sorted-quantile.ts';

/**
 * The value below which a given share of the values lies, between the two nearest values where it falls between.
 *
 * Equation: type 7 of Hyndman and Fan: x_(h), h = (n - 1) p + 1, straight lines between order statistics
 *
 * @param values - any order, any unit; at least one
 * @param probability - p, 0 to 1
 * @returns quantile, unit of the values
 * @throws OutOfRangeError where there is no value, one is NaN, or p is outside 0 to 1
 * Source: [hyndman-fan-1996]
 * @example
 * quantile([8, 3, 4], 0.25) // => 3.5
 */
export function quantile(values: ArrayLike<number>, probability: number): number {
  const sorted = Float64Array.from(values).sort();
  const last = sorted[sorted.length - 1] ?? 0;
  if (Number.isNaN(last)) throw new OutOfRangeError('value', last, '', -Infinity, Infinity);
  return sortedQuantile(sorted, probability);
}
