import { OutOfRangeError } from '../refuse/out-of-range-error.ts';
import { summarize } from './summarize.ts';
import { tTest, type TTest } from './t-test.ts';

/**
 * Whether values that belong together in pairs differ, pair by pair, in their mean.
 *
 * Equation: d_i = x_i - y_i, t = d̄ / (s_d / √n), ν = n - 1
 * Assumes: the differences are independent and about normal.
 *
 * @param first - x_i, any unit
 * @param second - y_i, as many, in the same order, unit of the first
 * @param confidence - c, 1, above 0 and under 1
 * @returns the test; difference is first minus second, unit of the values
 * @throws OutOfRangeError where the counts differ, there are fewer than two pairs, or c is outside
 * Source: [student-1908]
 * @example
 * pairedT([5, 7, 6], [4, 5, 6]).t // => 1.73205
 */
export function pairedT(first: ArrayLike<number>, second: ArrayLike<number>, confidence = 0.95): TTest {
  const count = first.length;
  if (second.length !== count)
    throw new OutOfRangeError('number of second values', second.length, '', count, count);
  const differences = summarize(Float64Array.from(first, (value, i) => value - second[i]!));
  const standardError = differences.standardDeviation / Math.sqrt(count);
  return tTest({ value: differences.mean, standardError, degreesOfFreedom: count - 1 }, confidence);
}
