import quantile from '@stdlib/stats-base-dists-normal-quantile';

/**
 * The value that a standard normal quantity stays under with a given probability.
 *
 * Equation: z with Φ(z) = p
 *
 * @param probability - p, 0 to 1
 * @returns z, 1 (standard deviations from the mean); ±Infinity at 0 and 1, NaN outside
 * Source: [stdlib]
 * @example
 * normalQuantile(0.975) // => 1.95996
 */
export function normalQuantile(probability: number): number {
  return quantile(probability, 0, 1);
}
