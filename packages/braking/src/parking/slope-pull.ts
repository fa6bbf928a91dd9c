import { requireRange } from '@standstill/numerics';
import { standardGravity } from '../load/standard-gravity.ts';

export interface SlopePullInput {
  /** m, kg. */
  readonly mass: number;
  /** Rise over run, 1. */
  readonly grade: number;
}

/**
 * Answers the force that would roll a parked car down a slope.
 *
 * Equation: F = m g sin θ, θ = atan(grade).
 * Assumes: rolling resistance does not help.
 * Valid: grade from 0 to 1.
 *
 * @param input - m, mass, kg; grade, rise over run, 1
 * @returns N, force along the slope
 * @throws OutOfRangeError where an input cannot be
 * Source: [textbook-formula]
 * @example
 * slopePull({ mass: 1600, grade: 0.2 }) // => 3077.19
 */
export function slopePull({ mass, grade }: SlopePullInput): number {
  requireRange('mass', mass, 'kg', 50, 50_000);
  requireRange('grade', grade, '', 0, 1);
  return (mass * standardGravity * grade) / Math.sqrt(1 + grade * grade);
}
