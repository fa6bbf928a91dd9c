import { OutOfRangeError } from '../refuse/out-of-range-error.ts';
import { requireRange } from '../refuse/require-range.ts';
import type { SampleSummary } from './summarize.ts';
import { tTest, type TTest } from './t-test.ts';

/** A set of values with the weight that its mean has in a sum. */
export interface WeightedSample extends SampleSummary {
  /** c, 1. */
  readonly weight: number;
}

/**
 * How large a weighted sum of the means of several sets is, when their spreads may differ: of two sets with weights 1
 * and -1 it is Welch's test.
 *
 * Equation: d = Σ c_i x̄_i, v_i = c_i² s_i² / n_i, t = d / √Σ v_i, ν = (Σ v_i)² / Σ (v_i² / (n_i - 1))
 * Assumes: values independent and about normal within each set, sets independent of each other.
 * Valid: two values or more in each set; where no set spreads at all, ν is taken as Σ (n_i - 1).
 *
 * @param samples - count, mean, standard deviation, all of one unit, and weight of each; one at least
 * @param confidence - c, 1, above 0 and under 1
 * @returns the test; difference is the weighted sum, unit of the values
 * @throws OutOfRangeError where there is no set, one has fewer than two values, or c is outside
 * Source: [satterthwaite-1946], [nist-handbook]
 * @example
 * contrastOfMeans([{ count: 4, mean: 40, standardDeviation: 1, weight: 1 }, { count: 4, mean: 44, standardDeviation: 1, weight: -0.5 }, { count: 4, mean: 43, standardDeviation: 1, weight: -0.5 }]).difference // => -3.5
 */
export function contrastOfMeans(samples: readonly WeightedSample[], confidence = 0.95): TTest {
  if (samples.length < 1) throw new OutOfRangeError('number of sets', samples.length, '', 1, Infinity);
  let value = 0;
  let variance = 0;
  let parts = 0;
  let all = 0;
  for (const { count, mean, standardDeviation, weight } of samples) {
    requireRange('number of values', count, '', 2, Number.MAX_SAFE_INTEGER);
    const part = (weight * standardDeviation) ** 2 / count;
    value += weight * mean;
    variance += part;
    parts += part ** 2 / (count - 1);
    all += count - 1;
  }
  const degreesOfFreedom = parts > 0 ? variance ** 2 / parts : all;
  return tTest({ value, standardError: Math.sqrt(variance), degreesOfFreedom }, confidence);
}
