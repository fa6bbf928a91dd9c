import { normalCdf } from '../distributions/normal-cdf.ts';
import { normalDensity } from '../distributions/normal-density.ts';
import { requireRange } from '../refuse/require-range.ts';

const reach = 12;
const step = 0.01;

/**
 * How much better than the mean the best of n tries is by luck alone: what "best of each" gives away.
 *
 * Equation: E(best of n) = ∫ z n φ(z) Φ(z)^(n-1) dz, in standard deviations from the mean
 * Assumes: tries independent and normal.
 * Valid: n from 1 to 1e9.
 *
 * @param count - n, 1, tries
 * @returns gain of the best over the mean, 1 (standard deviations of a single try), 0 for one try
 * @throws OutOfRangeError where n is below 1 or above 1e9
 * @example
 * expectedBestOf(5) // => 1.16296
 */
export function expectedBestOf(count: number): number {
  requireRange('number of tries', count, '', 1, 1e9);
  let sum = 0;
  for (let i = 0; i <= (2 * reach) / step; i += 1) {
    const z = -reach + i * step;
    sum += z * normalDensity(z) * normalCdf(z) ** (count - 1);
  }
  return count * sum * step;
}
