import quantile from '@stdlib/stats-base-dists-t-quantile';
import { requireRange } from '../refuse/require-range.ts';

/**
 * The value that a t-distributed quantity stays under with a given probability.
 *
 * Equation: t with P(T <= t) = p, T of Student's distribution with ν degrees of freedom
 *
 * @param probability - p, 0 to 1
 * @param degreesOfFreedom - ν, 1, need not be whole
 * @returns t, 1; ±Infinity at 0 and 1
 * @throws OutOfRangeError where ν is not above 0 and finite, or p is outside 0 to 1
 * Source: [stdlib]
 * @example
 * tQuantile(0.975, 9) // => 2.26216
 */
export function tQuantile(probability: number, degreesOfFreedom: number): number {
  requireRange('probability', probability, '', 0, 1);
  requireRange('degrees of freedom', degreesOfFreedom, '', Number.MIN_VALUE, Number.MAX_VALUE);
  return quantile(probability, degreesOfFreedom);
}
