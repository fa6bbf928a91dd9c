import { normalDensity } from './normal-density.ts';

/** Below this the tail is a continued fraction, above it the middle is a power series. */
const tailStart = 4;
const fractionDepth = 60;

/**
 * How likely a standard normal quantity is to be at most z.
 *
 * Equation: Φ(z) = 1/2 + φ(z) (z + z³/3 + z⁵/(3·5) + …); in the tails Φ(-z) = φ(z) / (z + 1/(z + 2/(z + …)))
 * Valid: any z; about 14 digits, in the lower tail of its own size.
 *
 * @param z - z, 1
 * @returns probability, 0 to 1
 * Source: [abramowitz-stegun]
 * @example
 * normalCdf(1.959964) // => 0.975
 */
export function normalCdf(z: number): number {
  if (z <= -tailStart) return lowerTail(-z);
  if (z >= tailStart) return 1 - lowerTail(z);
  let term = z;
  let sum = z;
  for (let k = 3; Math.abs(term) > Number.EPSILON * 0.1 * Math.abs(sum); k += 2) {
    term *= (z * z) / k;
    sum += term;
  }
  return 0.5 + normalDensity(z) * sum;
}

function lowerTail(z: number): number {
  let fraction = z;
  for (let k = fractionDepth; k >= 1; k -= 1) fraction = z + k / fraction;
  return normalDensity(z) / fraction;
}
