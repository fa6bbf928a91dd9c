import { requireRange } from '@standstill/numerics';
import type { Pad } from '../set-up/pad.ts';
import type { Rotor } from '../set-up/rotor.ts';

export interface RotorWithPad {
  readonly rotor: Rotor;
  readonly pad: Pad;
}

/**
 * Answers the area of ONE rotor face that the pads sweep.
 *
 * Equation: A = π (R_o² − R_i²), R_i = R_o less the pad's radial height.
 * Valid: R_o from 40 to 400 mm, R_i above 5 mm.
 *
 * @param parts - rotor with R_o, swept outer radius, m; pad with its radial height, m
 * @returns m², swept area of one face
 * @throws OutOfRangeError where an input cannot be
 * Source: [geometry]
 * @example
 * sweptArea({ rotor: exampleSetUp.frontBrake.rotor, pad: exampleSetUp.frontBrake.pad }) // => 0.0326569
 */
export function sweptArea({ rotor, pad }: RotorWithPad): number {
  const outer = requireRange('swept outer radius', rotor.sweptOuterRadius, 'm', 0.04, 0.4);
  const height = requireRange('radial height of the pad', pad.radialHeight, 'm', 0.005, outer - 0.005);
  return Math.PI * height * (2 * outer - height);
}
