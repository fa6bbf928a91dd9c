import { OutOfRangeError } from '../refuse/out-of-range-error.ts';
import { mean } from './mean.ts';

/**
 * How far values spread about their mean, as an estimate for the population that they come from.
 *
 * Equation: s = √(Σ (x_i - x̄)² / (n - 1)), in two passes, the second corrected for the rounding of the mean
 *
 * @param values - x_i, any unit; at least two
 * @returns s, unit of the values
 * @throws OutOfRangeError where there are fewer than two values, or one is not finite
 * Source: [chan-1983]
 * @example
 * standardDeviation([3, 4, 8]) // => 2.64575
 */
export function standardDeviation(values: ArrayLike<number>): number {
  const count = values.length;
  if (count < 2) throw new OutOfRangeError('number of values', count, '', 2, Infinity);
  const center = mean(values);
  let squares = 0;
  let rest = 0;
  for (let i = 0; i < count; i += 1) {
    const away = values[i]! - center;
    squares += away * away;
    rest += away;
  }
  return Math.sqrt((squares - (rest * rest) / count) / (count - 1));
}
