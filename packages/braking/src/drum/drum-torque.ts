import { requireRange } from '@standstill/numerics';
import type { DrumBrake } from '../set-up/drum-brake.ts';
import { brakeFactor } from './brake-factor.ts';

export interface DrumTorqueInput {
  readonly drum: DrumBrake;
  /** p, Pa, line pressure at this corner. */
  readonly pressure: number;
  /** μ of the lining, 1. */
  readonly friction: number;
}

/**
 * Answers the torque of ONE drum brake.
 *
 * Equation: T = C*(μ) (p − p_0) A r η, zero below p_0; A = π d² / 4 of one piston of the wheel cylinder.
 * Assumes: forward travel; the other way round a simplex is as strong, a duplex far weaker.
 * Valid: pressure 0 to 60 MPa; friction as `shoeFactor`.
 *
 * @param input - drum brake; p, line pressure, Pa; μ, lining friction, 1
 * @returns N m, torque on one wheel
 * @throws OutOfRangeError where an input cannot be
 * Source: [limpert]
 * @example
 * drumTorque({ drum: exampleDrum, pressure: 3e6, friction: 0.38 }) // => 163.771
 */
export function drumTorque({ drum, pressure, friction }: DrumTorqueInput): number {
  requireRange('line pressure', pressure, 'Pa', 0, 60e6);
  const over = Math.max(0, pressure - requireRange('push-out pressure', drum.pushOutPressure, 'Pa', 0, 2e6));
  const bore = requireRange('bore of the wheel cylinder', drum.cylinderBore, 'm', 0.01, 0.06);
  const radius = requireRange('drum radius', drum.radius, 'm', 0.05, 0.3);
  const efficiency = requireRange('efficiency of the wheel cylinder', drum.efficiency, '', 0.1, 1);
  return brakeFactor({ drum, friction }) * over * (Math.PI / 4) * bore * bore * radius * efficiency;
}
