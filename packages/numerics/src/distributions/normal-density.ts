const peak = 1 / Math.sqrt(2 * Math.PI);

/**
 * Density of the standard normal distribution.
 *
 * Equation: φ(z) = exp(-z²/2) / √(2π)
 *
 * @param z - z, 1
 * @returns density, 1
 * @example
 * normalDensity(0) // => 0.398942
 */
export function normalDensity(z: number): number {
  return peak * Math.exp(-0.5 * z * z);
}
