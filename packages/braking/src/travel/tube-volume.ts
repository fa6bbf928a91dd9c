import { requireRange } from '@standstill/numerics';
import type { Tube } from '../set-up/tube.ts';

/** ν of steel and of copper-nickel within a few hundredths, 1. */
const poissonRatio = 0.3;

/**
 * Answers how much the bore of a rigid line grows under pressure.
 *
 * Equation: ΔV = V (p / E) (3 (1 − 2ν) r_i² + 2 (1 + ν) r_o²) / (r_o² − r_i²), V = π r_i² l (thick-walled cylinder with
 * closed ends).
 * Assumes: elastic wall, ν = 0.3.
 * Valid: length up to 20 m, bore 1 to 20 mm, wall 0.1 to 5 mm, E from 1 GPa.
 *
 * @param tube - tube with l, length, m; inner diameter, m; wall, m; E, Pa
 * @param pressure - p, line pressure, Pa
 * @returns m³, growth of the bore
 * @throws OutOfRangeError where an input cannot be
 * Source: [textbook-formula]
 * @example
 * tubeVolume({ length: 3, innerDiameter: 0.0032, wallThickness: 0.0007, elasticModulus: 200e9 }, 10e6) // => 7.43531e-09
 */
export function tubeVolume(tube: Tube, pressure: number): number {
  requireTube(tube);
  requireRange('line pressure', pressure, 'Pa', 0, 60e6);
  const inner = (tube.innerDiameter / 2) ** 2;
  const outer = (tube.innerDiameter / 2 + tube.wallThickness) ** 2;
  const growth = (3 * (1 - 2 * poissonRatio) * inner + 2 * (1 + poissonRatio) * outer) / (outer - inner);
  return Math.PI * inner * tube.length * growth * (pressure / tube.elasticModulus);
}

function requireTube(tube: Tube): void {
  requireRange('tube length', tube.length, 'm', 0, 20);
  requireRange('inner diameter of the tube', tube.innerDiameter, 'm', 0.001, 0.02);
  requireRange('wall of the tube', tube.wallThickness, 'm', 0.0001, 0.005);
  requireRange('elastic modulus of the tube', tube.elasticModulus, 'Pa', 1e9, 1e12);
}
