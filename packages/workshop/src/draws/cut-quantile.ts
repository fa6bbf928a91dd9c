import { normalQuantile } from '@standstill/numerics';

/** Standard deviations at which tails are cut: farther out a normal spread says more than anybody knows. */
const farthest = 4;

/**
 * How many standard deviations a drawn value is from the central one.
 *
 * Equation: Φ⁻¹(u), cut at ±4
 *
 * @param share - u, 0 to 1
 * @returns standard deviations, 1
 */
export function cutQuantile(share: number): number {
  return Math.max(-farthest, Math.min(farthest, normalQuantile(share)));
}
