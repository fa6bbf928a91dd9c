import quantile from '@stdlib/stats-base-dists-normal-quantile';
import { requireRange } from '../refuse/require-range.ts';
import { normalCdf } from './normal-cdf.ts';
import { normalDensity } from './normal-density.ts';

/** Below this the library works with 2p - 1, which no longer holds all digits of p. */
const tail = 1e-3;

/** The middle, where a quotient of two polynomials takes a third of the library's time. */
const middleStart = 0.075;
const middleEnd = 0.925;

/**
 * The value that a standard normal quantity stays under with a given probability.
 *
 * Equation: z with Φ(z) = p; in the middle 85 % q A(r) / B(r), q = p − 1/2, r = 0.425² − q², A and B of seventh degree;
 * below p = 0.001 by Newton's method on ln Φ
 * Valid: about 11 digits, down to the smallest p; in the middle about 15.
 *
 * @param probability - p, 0 to 1
 * @returns z, 1 (standard deviations from the mean); ±Infinity at 0 and 1
 * @throws OutOfRangeError where p is outside 0 to 1
 * Source: [stdlib], [wichura-1988]
 * @example
 * normalQuantile(0.975) // => 1.95996
 */
export function normalQuantile(probability: number): number {
  if (probability > middleStart && probability < middleEnd) return middleQuantile(probability - 0.5);
  requireRange('probability', probability, '', 0, 1);
  return probability > 0 && probability < tail ? tailQuantile(probability) : quantile(probability, 0, 1);
}

function middleQuantile(q: number): number {
  const r = 0.180625 - q * q;
  let above = 2.5090809287301226727e3;
  above = above * r + 3.3430575583588128105e4;
  above = above * r + 6.7265770927008700853e4;
  above = above * r + 4.5921953931549871457e4;
  above = above * r + 1.3731693765509461125e4;
  above = above * r + 1.9715909503065514427e3;
  above = above * r + 1.3314166789178437745e2;
  above = above * r + 3.387132872796366608;
  let below = 5.226495278852854561e3;
  below = below * r + 2.8729085735721942674e4;
  below = below * r + 3.930789580009271061e4;
  below = below * r + 2.1213794301586595867e4;
  below = below * r + 5.3941960214247511077e3;
  below = below * r + 6.871870074920579083e2;
  below = below * r + 4.2313330701600911252e1;
  below = below * r + 1;
  return (q * above) / below;
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
