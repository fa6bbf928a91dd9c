import { requireRange } from '../refuse/require-range.ts';
import type { SampleSummary } from './summarize.ts';
import { tTest, type TTest } from './t-test.ts';

/**
 * Whether two sets of values differ in their mean, taking their spreads as equal. Where that is not sure, use `welch`.
 *
 * Equation: s_p² = ((n_1-1) s_1² + (n_2-1) s_2²) / ν, ν = n_1 + n_2 - 2, t = (x̄_1 - x̄_2) / (s_p √(1/n_1 + 1/n_2))
 * Assumes: values independent and about normal; both populations spread alike.
 *
 * @param first - count, mean, standard deviation; any unit
 * @param second - count, mean, standard deviation; unit of the first
 * @param confidence - c, 1, above 0 and under 1
 * @returns the test; difference is first minus second, unit of the values
 * @throws OutOfRangeError where a set has fewer than two values or c is outside
 * Source: [rsscse-two-sample-t]
 * @example
 * pooledT({ count: 10, mean: 9.63, standardDeviation: 1.2 }, { count: 15, mean: 10.78, standardDeviation: 0.94 }).t // => -2.68421
 */
export function pooledT(first: SampleSummary, second: SampleSummary, confidence = 0.95): TTest {
  requireRange('number of values', Math.min(first.count, second.count), '', 2, Number.MAX_SAFE_INTEGER);
  const degreesOfFreedom = first.count + second.count - 2;
  const pooled = Math.sqrt((squares(first) + squares(second)) / degreesOfFreedom);
  const standardError = pooled * Math.sqrt(1 / first.count + 1 / second.count);
  return tTest({ value: first.mean - second.mean, standardError, degreesOfFreedom }, confidence);
}

function squares(sample: SampleSummary): number {
  return (sample.count - 1) * sample.standardDeviation ** 2;
}
