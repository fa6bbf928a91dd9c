import { requireRange } from '../refuse/require-range.ts';
import type { SampleSummary } from './summarize.ts';
import { tTest, type TTest } from './t-test.ts';

/**
 * Whether two sets of values differ in their mean, and by how much, when their spreads may differ too.
 *
 * Equation: t = (x̄_1 - x̄_2) / √(v_1 + v_2), v = s²/n, ν = (v_1 + v_2)² / (v_1²/(n_1-1) + v_2²/(n_2-1))
 * Assumes: values independent and about normal within each set.
 * Valid: two values or more in each set; where neither set spreads at all, ν is taken as n_1 + n_2 - 2.
 *
 * @param first - count, mean, standard deviation; any unit
 * @param second - count, mean, standard deviation; unit of the first
 * @param confidence - c, 1, above 0 and under 1
 * @returns the test; difference is first minus second, unit of the values
 * @throws OutOfRangeError where a set has fewer than two values or c is outside
 * Source: [nist-handbook]
 * @example
 * welch({ count: 6, mean: 30, standardDeviation: 0.05 }, { count: 6, mean: 29.9, standardDeviation: 0.1 }).t // => 2.19089
 */
export function welch(first: SampleSummary, second: SampleSummary, confidence = 0.95): TTest {
  const firstPart = squaredErrorOfMean(first);
  const secondPart = squaredErrorOfMean(second);
  const together = firstPart + secondPart;
  const parts = firstPart ** 2 / (first.count - 1) + secondPart ** 2 / (second.count - 1);
  const degreesOfFreedom = parts > 0 ? together ** 2 / parts : first.count + second.count - 2;
  const value = first.mean - second.mean;
  return tTest({ value, standardError: Math.sqrt(together), degreesOfFreedom }, confidence);
}

function squaredErrorOfMean(sample: SampleSummary): number {
  const count = requireRange('number of values', sample.count, '', 2, Number.MAX_SAFE_INTEGER);
  return sample.standardDeviation ** 2 / count;
}
