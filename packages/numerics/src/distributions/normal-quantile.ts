import quantile from '@stdlib/stats-base-dists-normal-quantile';
import { requireRange } from '../refuse/require-range.ts';
import { normalCdf } from './normal-cdf.ts';
import { normalDensity } from './normal-density.ts';

/** The middle, and how far out the quotients of two polynomials reach, which take a third of the library's time. */
const middleStart = 0.075;
const middleEnd = 0.925;
const farthest = 2e-11;

/**
 * The value that a standard normal quantity stays under with a given probability.
 *
 * Equation: z with Φ(z) = p; in the middle 85 % q A(r) / B(r), q = p − 1/2, r = 0.425² − q²; from there to 2e-11 from
 * either end ∓C(r) / D(r), r = √(−ln p) − 1.6 with p or 1 − p; A to D of seventh degree; below p = 2e-11 by Newton's
 * method on ln Φ
 * Valid: about 15 digits down to p = 2e-11, and about 11 below.
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
  if (probability >= farthest && probability < 0.5) return -farQuantile(probability);
  if (probability > 0.5 && 1 - probability >= farthest) return farQuantile(1 - probability);
  requireRange('probability', probability, '', 0, 1);
  return probability > 0 && probability < 0.5 ? tailQuantile(probability) : quantile(probability, 0, 1);
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

/** How far out the probability is that is left beyond it; positive. */
function farQuantile(beyond: number): number {
  const r = Math.sqrt(-Math.log(beyond)) - 1.6;
  let above = 7.745450142783414e-4;
  above = above * r + 0.022723844989269184;
  above = above * r + 0.2417807251774506;
  above = above * r + 1.2704582524523684;
  above = above * r + 3.6478483247632045;
  above = above * r + 5.769497221460691;
  above = above * r + 4.630337846156546;
  above = above * r + 1.4234371107496835;
  let below = 1.0507500716444169e-9;
  below = below * r + 5.475938084995345e-4;
  below = below * r + 0.015198666563616457;
  below = below * r + 0.14810397642748008;
  below = below * r + 0.6897673349851;
  below = below * r + 1.6763848301838038;
  below = below * r + 2.053191626637759;
  below = below * r + 1;
  return above / below;
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
