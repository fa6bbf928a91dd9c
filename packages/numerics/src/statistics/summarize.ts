import { mean } from './mean.ts';
import { standardDeviation } from './standard-deviation.ts';

/** What the t procedures need to know of a set of values. */
export interface SampleSummary {
  /** n, 1. */
  readonly count: number;
  /** x̄, unit of the values. */
  readonly mean: number;
  /** s, unit of the values. */
  readonly standardDeviation: number;
}

/**
 * Count, mean and standard deviation of a set of values.
 *
 * @param values - at least two, any unit
 * @returns the summary, unit of the values
 * @throws OutOfRangeError where there are fewer than two values, or one is not finite
 * @example
 * summarize([3, 4, 8]).mean // => 5
 */
export function summarize(values: ArrayLike<number>): SampleSummary {
  return { count: values.length, mean: mean(values), standardDeviation: standardDeviation(values) };
}
