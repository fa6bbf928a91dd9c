import { requireRange } from '@standstill/numerics';

export interface LumpedRiseInput {
  /** E, J. */
  readonly energy: number;
  /** m, kg. */
  readonly mass: number;
  /** c, J/(kg K). */
  readonly specificHeat: number;
}

/**
 * Answers how much warmer a body gets when heat is spread evenly through it and none leaves.
 *
 * Equation: ΔT = E / (m c).
 * Assumes: one temperature; constant specific heat; for one stop take the ring swept by the pads, not hub and hat.
 * Valid: energy from 0 to 1 GJ.
 *
 * @param input - E, heat put in, J; m, mass that warms, kg; c, specific heat, J/(kg K)
 * @returns K, rise of temperature
 * @throws OutOfRangeError where an input cannot be
 * Source: [limpert], [day-brakes]
 * @example
 * lumpedRise({ energy: 216000, mass: 15, specificHeat: 450 }) // => 32
 */
export function lumpedRise({ energy, mass, specificHeat }: LumpedRiseInput): number {
  requireRange('heat put in', energy, 'J', 0, 1e9);
  requireRange('mass that warms', mass, 'kg', 1e-3, 1e5);
  requireRange('specific heat', specificHeat, 'J/(kg K)', 50, 5000);
  return energy / (mass * specificHeat);
}
