import { tCdf } from '../distributions/t-cdf.ts';
import type { Interval } from './interval.ts';
import { tInterval, type Estimate } from './t-interval.ts';

/** What a t test says of a difference. */
export interface TTest extends Interval {
  /** First minus second, unit of the values. */
  readonly difference: number;
  /** Unit of the values. */
  readonly standardError: number;
  /** Difference over standard error, 1; ±Infinity or NaN where nothing spreads. */
  readonly t: number;
  /** ν, 1. */
  readonly degreesOfFreedom: number;
  /** Probability of a |t| at least as large were there no difference, 0 to 1; NaN where t is NaN. */
  readonly p: number;
  /** c of the interval `low` to `high`, 1. */
  readonly confidence: number;
}

/**
 * Judges a difference by its standard error, both ways (two-sided).
 *
 * Equation: t = d / s_d, p = 2 P(T <= -|t|)
 *
 * @param estimate - difference, its standard error, degrees of freedom; any unit
 * @param confidence - c, 1, above 0 and under 1
 * @returns the test with the interval of the difference, unit of the difference
 * @throws OutOfRangeError where c is outside, or ν is not above 0
 * @example
 * tTest({ value: 2, standardError: 1, degreesOfFreedom: 10 }, 0.95).p // => 0.0733880
 */
export function tTest(estimate: Estimate, confidence: number): TTest {
  const t = estimate.value / estimate.standardError;
  return {
    ...tInterval(estimate, confidence),
    difference: estimate.value,
    standardError: estimate.standardError,
    t,
    degreesOfFreedom: estimate.degreesOfFreedom,
    p: 2 * tCdf(-Math.abs(t), estimate.degreesOfFreedom),
    confidence,
  };
}
