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
  let above = 2509.0809287301227;
  above = above * r + 33430.57558358813;
  above = above * r + 67265.7709270087;
  above = above * r + 45921.95393154987;
  above = above * r + 13731.69376550946;
  above = above * r + 1971.5909503065513;
  above = above * r + 133.14166789178438;
  above = above * r + 3.3871328727963665;
  let below = 5226.495278852854;
  below = below * r + 28729.085735721943;
  below = below * r + 39307.89580009271;
  below = below * r + 21213.794301586597;
  below = below * r + 5394.196021424751;
  below = below * r + 687.1870074920579;
  below = below * r + 42.31333070160091;
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
