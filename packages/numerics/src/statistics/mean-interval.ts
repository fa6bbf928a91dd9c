import { requireRange } from '../refuse/require-range.ts';
import type { Interval } from './interval.ts';
import type { SampleSummary } from './summarize.ts';
import { tInterval } from './t-interval.ts';

/**
 * Where the mean of the population lies that a set of values comes from.
 *
 * Equation: x̄ ± t_(1-(1-c)/2, n-1) s / √n
 * Assumes: values independent and about normal; a drift over the run order breaks this.
 *
 * @param sample - count, mean, standard deviation; any unit
 * @param confidence - c, 1, above 0 and under 1
 * @returns interval, unit of the values
 * @throws OutOfRangeError where there are fewer than two values or c is outside
 * Source: [nist-handbook]
 * @example
 * meanInterval({ count: 4, mean: 10, standardDeviation: 2 }, 0.95).high // => 13.1824
 */
export function meanInterval(sample: SampleSummary, confidence = 0.95): Interval {
  const count = requireRange('number of values', sample.count, '', 2, Number.MAX_SAFE_INTEGER);
  const standardError = sample.standardDeviation / Math.sqrt(count);
  return tInterval({ value: sample.mean, standardError, degreesOfFreedom: count - 1 }, confidence);
}
