import quantile from '@stdlib/stats-base-dists-chisquare-quantile';
import { requireRange } from '../refuse/require-range.ts';

/**
 * The value that a sum of squares of standard normal quantities stays under with a given probability.
 *
 * Equation: x with P(X <= x) = p, X of the chi-squared distribution with ν degrees of freedom
 *
 * @param probability - p, 0 to 1
 * @param degreesOfFreedom - ν, 1, need not be whole
 * @returns x, 1; 0 at 0 and Infinity at 1
 * @throws OutOfRangeError where ν is not above 0 and finite, or p is outside 0 to 1
 * Source: [stdlib]
 * @example
 * chiSquaredQuantile(0.975, 9) // => 19.0228
 */
export function chiSquaredQuantile(probability: number, degreesOfFreedom: number): number {
  requireRange('probability', probability, '', 0, 1);
  requireRange('degrees of freedom', degreesOfFreedom, '', Number.MIN_VALUE, Number.MAX_VALUE);
  return quantile(probability, degreesOfFreedom);
}
