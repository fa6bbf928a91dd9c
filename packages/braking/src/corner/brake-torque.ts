import { requireRange } from '@standstill/numerics';
import type { AxleBrake } from '../set-up/axle-brake.ts';
import type { Caliper } from '../set-up/caliper.ts';
import { effectiveRadius } from './effective-radius.ts';
import { pistonArea } from './piston-area.ts';

export interface BrakeTorqueInput {
  readonly brake: AxleBrake;
  /** p, Pa, line pressure at this corner. */
  readonly pressure: number;
  /** μ of the pads, 1. */
  readonly friction: number;
}

/**
 * Answers the brake torque of ONE corner.
 *
 * Equation: T = 2 μ (p − p_0) A r_e η, zero below the push-out pressure p_0.
 * Assumes: two pads, each pressed by the piston area A of one side. In a floating caliper the reaction through the
 * bridge presses the outer pad as hard as the pistons press the inner one, in a fixed caliper the pistons of the
 * other side do: the 2 counts pads, and nothing else depends on the kind of caliper.
 * Valid: pressure 0 to 60 MPa, friction 0 to 1.5.
 *
 * @param input - brake of the axle (one corner's parts); p, line pressure, Pa; μ, pad friction, 1
 * @returns N m, torque on one wheel
 * @throws OutOfRangeError where an input cannot be
 * Source: [limpert]
 * @example
 * brakeTorque({ brake: exampleSetUp.frontBrake, pressure: 5.05e6, friction: 0.4 }) // => 1005.18
 */
export function brakeTorque({ brake, pressure, friction }: BrakeTorqueInput): number {
  requireRange('line pressure', pressure, 'Pa', 0, 60e6);
  requireRange('pad friction', friction, '', 0, 1.5);
  return Math.max(0, pressure - brake.caliper.pushOutPressure) * friction * torquePerPressure(brake);
}

function torquePerPressure(brake: AxleBrake): number {
  requireCaliper(brake.caliper);
  const radius = effectiveRadius({
    rotor: brake.rotor,
    pad: brake.pad,
    assumption: brake.pressureAssumption,
  });
  return 2 * pistonArea(brake.caliper) * radius * brake.caliper.efficiency;
}

function requireCaliper(caliper: Caliper): void {
  requireRange('push-out pressure', caliper.pushOutPressure, 'Pa', 0, 2e6);
  requireRange('caliper efficiency', caliper.efficiency, '', 0.1, 1);
}
