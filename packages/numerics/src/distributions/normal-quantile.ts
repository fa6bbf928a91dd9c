import quantile from '@stdlib/stats-base-dists-normal-quantile';
import { requireRange } from '../refuse/require-range.ts';
import { normalCdf } from './normal-cdf.ts';
import { normalDensity } from './normal-density.ts';

/** Below this the library works with 2p - 1, which no longer holds all digits of p. */
const tail = 1e-3;

/**
 * The value that a standard normal quantity stays under with a given probability.
 *
 * Equation: z with Φ(z) = p; below p = 0.001 by Newton's method on ln Φ
 * Valid: about 11 digits, down to the smallest p.
 *
 * @param probability - p, 0 to 1
 * @returns z, 1 (standard deviations from the mean); ±Infinity at 0 and 1
 * @throws OutOfRangeError where p is outside 0 to 1
 * Source: [stdlib]
 * @example
 * normalQuantile(0.975) // => 1.95996
 */
export function normalQuantile(probability: number): number {
  requireRange('probability', probability, '', 0, 1);
  return probability > 0 && probability < tail ? tailQuantile(probability) : quantile(probability, 0, 1);
}

function tailQuantile(probability: number): number {
  const goal = Math.log(probability);
  let z = -Math.sqrt(-2 * goal);
  for (let i = 0; i < 5; i += 1) {
    const below = normalCdf(z);
    z -= ((Math.log(below) - goal) * below) / normalDensity(z);
  }
  return z;
}
