import { requireRange } from '@standstill/numerics';
import type { Tire } from '../set-up/tire.ts';

export interface BrakeForceInput {
  /** T, N m, torque of one wheel. */
  readonly torque: number;
  readonly tire: Tire;
}

/**
 * Answers the force at the road of one braked wheel that does not slide.
 *
 * Equation: F = T / r.
 * Assumes: the rolling radius is also the arm of the brake force; the wheel's own inertia is not counted.
 * Valid: radius 0.1 to 1 m.
 *
 * @param input - T, brake torque of one wheel, N m; tire with r, rolling radius, m
 * @returns N, brake force of one wheel
 * @throws OutOfRangeError where an input cannot be
 * Source: [gillespie]
 * @example
 * brakeForce({ torque: 930, tire: exampleSetUp.frontTire }) // => 3000
 */
export function brakeForce({ torque, tire }: BrakeForceInput): number {
  requireRange('brake torque', torque, 'N m', 0, 1e5);
  return torque / requireRange('rolling radius', tire.rollingRadius, 'm', 0.1, 1);
}
