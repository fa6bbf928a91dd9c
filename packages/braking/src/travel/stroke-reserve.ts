import { requireRange } from '@standstill/numerics';
import { boreArea } from '../foot-to-pressure/bore-area.ts';
import type { MasterCylinder } from '../set-up/master-cylinder.ts';

export interface StrokeReserveInput {
  readonly masterCylinder: MasterCylinder;
  /** m³ swallowed by the front axle. */
  readonly frontVolume: number;
  /** m³ swallowed by the rear axle. */
  readonly rearVolume: number;
}

/**
 * Answers how much stroke the master cylinder has left, at its own piston.
 *
 * Equation: tandem: s − (V_f + V_r) / A; balance bar: the smaller of s − V_f / A_f and s − V_r / A_r.
 * Assumes: the dead stroke is in the pedal's free play. Limits of the single pistons inside a tandem cylinder are not
 * known and not looked at.
 * Valid: stroke 5 to 100 mm.
 *
 * @param input - master cylinder with s, stroke, m; V_f and V_r, volumes swallowed by the axles, m³
 * @returns m left; negative where the cylinder bottoms before the pressure is reached
 * @throws OutOfRangeError where an input cannot be
 * Source: [textbook-formula]
 * @example
 * strokeReserve({ masterCylinder: { kind: 'tandem', bore: 0.02, stroke: 0.035, efficiency: 1 }, frontVolume: 3e-6, rearVolume: 1e-6 }) // => 0.0222676
 */
export function strokeReserve({ masterCylinder, frontVolume, rearVolume }: StrokeReserveInput): number {
  const stroke = requireRange('master cylinder stroke', masterCylinder.stroke, 'm', 0.005, 0.1);
  requireRange('front fluid volume', frontVolume, 'm³', 0, 0.01);
  requireRange('rear fluid volume', rearVolume, 'm³', 0, 0.01);
  if (masterCylinder.kind === 'tandem')
    return stroke - (frontVolume + rearVolume) / boreArea(masterCylinder.bore);
  const front = stroke - frontVolume / boreArea(masterCylinder.frontBore);
  return Math.min(front, stroke - rearVolume / boreArea(masterCylinder.rearBore));
}
