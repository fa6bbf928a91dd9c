import { requireRange } from '@standstill/numerics';
import type { AxleBrake } from '../set-up/axle-brake.ts';
import type { Pad } from '../set-up/pad.ts';
import type { Rotor } from '../set-up/rotor.ts';

export interface EffectiveRadiusInput {
  readonly rotor: Rotor;
  readonly pad: Pad;
  /** How pressure is taken to spread over the pad. */
  readonly assumption: AxleBrake['pressureAssumption'];
}

/**
 * Answers the radius at which the pads' friction force may be taken to act.
 *
 * Equation: uniform pressure: r_e = ⅔ (R_o³ − R_i³) / (R_o² − R_i²); uniform wear: r_e = (R_o + R_i) / 2;
 * R_o = swept outer radius, R_i = R_o less the pad's radial height.
 * Assumes: the pad is an annular sector that fills the swept band. New pads are nearer to uniform pressure, bedded
 * pads to uniform wear; uniform wear never gives the larger radius.
 * Valid: R_o from 40 to 400 mm, R_i above zero.
 *
 * @param input - rotor with R_o, m; pad with its radial height, m; pressure assumption
 * @returns m, effective radius
 * @throws OutOfRangeError where an input cannot be
 * Source: [limpert]
 * @example
 * effectiveRadius({ rotor: exampleSetUp.frontBrake.rotor, pad: exampleSetUp.frontBrake.pad, assumption: 'uniform-wear' }) // => 0.1155
 */
export function effectiveRadius({ rotor, pad, assumption }: EffectiveRadiusInput): number {
  const outer = requireRange('swept outer radius', rotor.sweptOuterRadius, 'm', 0.04, 0.4);
  requireRange('swept outer radius', outer, 'm', 0.04, rotor.outerDiameter / 2);
  const height = requireRange('radial height of the pad', pad.radialHeight, 'm', 0.005, outer - 0.005);
  const inner = outer - height;
  if (assumption === 'uniform-wear') return (outer + inner) / 2;
  return ((2 / 3) * (outer * outer + outer * inner + inner * inner)) / (outer + inner);
}
