import cdf from '@stdlib/stats-base-dists-t-cdf';
import { requireRange } from '../refuse/require-range.ts';

/**
 * How likely a t-distributed quantity is to be at most t.
 *
 * Equation: P(T <= t), T of Student's distribution with ν degrees of freedom
 * Valid: any t; ν above 0 and finite. About 10 digits; tails are right in
 * their own size: ask for -|t|, not for 1 minus.
 *
 * @param t - t, 1
 * @param degreesOfFreedom - ν, 1, need not be whole
 * @returns probability, 0 to 1
 * @throws OutOfRangeError where ν is not above 0 and finite
 * Source: [stdlib]
 * @example
 * tCdf(2, 10) // => 0.963306
 */
export function tCdf(t: number, degreesOfFreedom: number): number {
  requireRange('degrees of freedom', degreesOfFreedom, '', Number.MIN_VALUE, Number.MAX_VALUE);
  return cdf(t, degreesOfFreedom);
}
