import { requireRange } from '../refuse/require-range.ts';
import { normalCdf } from './normal-cdf.ts';

/** Intervals of the sum; the integrand dies away at both ends, so that the error falls faster than any power. */
const intervals = 1200;

/** The integrand is left out where its weight is under e^-45 of its peak. */
const depth = 45;

/**
 * How likely a t-distributed quantity is to be at most t when the mean is not zero: what the power of a t test is
 * made of.
 *
 * Equation: P(T <= t) = ∫ Φ(t e^u - δ) w(u) du / ∫ w(u) du, w = exp(ν (u - e^(2u)/2)), u = ln √(χ²/ν)
 * Valid: any t and δ; ν above 0; about 10 digits.
 *
 * @param t - t, 1
 * @param degreesOfFreedom - ν, 1, need not be whole
 * @param noncentrality - δ, 1, mean over its standard error
 * @returns probability, 0 to 1
 * @throws OutOfRangeError where ν is not above 0 and finite
 * @example
 * noncentralTCdf(2.0243941639, 38, 3.16227766) // => 0.131047
 */
export function noncentralTCdf(t: number, degreesOfFreedom: number, noncentrality: number): number {
  const nu = requireRange('degrees of freedom', degreesOfFreedom, '', 1e-3, Number.MAX_VALUE);
  const high = Math.sqrt(depth / nu);
  const low = -high - depth / nu;
  let weights = 0;
  let sum = 0;
  for (let i = 0; i <= intervals; i += 1) {
    const u = low + ((high - low) * i) / intervals;
    const weight = Math.exp(nu * (u - 0.5 * Math.expm1(2 * u)));
    weights += weight;
    sum += weight * normalCdf(t * Math.exp(u) - noncentrality);
  }
  return sum / weights;
}
