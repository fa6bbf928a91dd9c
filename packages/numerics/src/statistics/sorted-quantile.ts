import { OutOfRangeError } from '../refuse/out-of-range-error.ts';
import { requireRange } from '../refuse/require-range.ts';

/**
 * As `quantile`, for values that are in ascending order already: allocates nothing.
 *
 * @param sorted - ascending, without NaN, any unit; at least one
 * @param probability - p, 0 to 1
 * @returns quantile, unit of the values
 * @throws OutOfRangeError where there is no value or p is outside 0 to 1
 * Source: [hyndman-fan-1996]
 * @example
 * sortedQuantile([3, 4, 8], 0.75) // => 6
 */
export function sortedQuantile(sorted: ArrayLike<number>, probability: number): number {
  if (sorted.length < 1) throw new OutOfRangeError('number of values', sorted.length, '', 1, Infinity);
  const place = requireRange('probability', probability, '', 0, 1) * (sorted.length - 1);
  const low = Math.floor(place);
  const share = place - low;
  if (share === 0) return sorted[low]!;
  return sorted[low]! + share * (sorted[low + 1]! - sorted[low]!);
}
