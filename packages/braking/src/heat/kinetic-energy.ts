import { requireRange } from '@standstill/numerics';

export interface KineticEnergyInput {
  /** m, kg; effective mass where the turning parts are to be counted. */
  readonly mass: number;
  /** v_1, m/s. */
  readonly startSpeed: number;
  /** v_2, m/s; 0 for a stop. */
  readonly endSpeed: number;
}

/**
 * Answers how much energy of motion must go when a car slows from one speed to another.
 *
 * Equation: E = ½ m (v_1² − v_2²).
 * Valid: speeds from 0 to 150 m/s, v_2 not above v_1.
 *
 * @param input - m, mass, kg; v_1, speed before, m/s; v_2, speed after, m/s
 * @returns J, energy of motion given up
 * @throws OutOfRangeError where an input cannot be
 * Source: [geometry]
 * @example
 * kineticEnergy({ mass: 750, startSpeed: 24, endSpeed: 0 }) // => 216000
 */
export function kineticEnergy({ mass, startSpeed, endSpeed }: KineticEnergyInput): number {
  requireRange('mass', mass, 'kg', 1, 1e5);
  requireRange('speed before', startSpeed, 'm/s', 0, 150);
  requireRange('speed after', endSpeed, 'm/s', 0, startSpeed);
  return 0.5 * mass * (startSpeed - endSpeed) * (startSpeed + endSpeed);
}
