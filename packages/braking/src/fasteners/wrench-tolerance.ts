import { requireRange } from '@standstill/numerics';

/**
 * Answers how far a setting torque wrench in calibration may be off.
 *
 * Equation: 0.04 T above 10 N m, 0.06 T at 10 N m and below.
 * Assumes: a setting wrench of class A, used within its range and checked every 5000 cycles or 12 months.
 * Valid: torque up to 2000 N m.
 *
 * @param torque - T, N m
 * @returns N m either way
 * @throws OutOfRangeError where the torque cannot be
 * Source: [iso-6789]
 * @example
 * wrenchTolerance(110) // => 4.4
 */
export function wrenchTolerance(torque: number): number {
  requireRange('torque', torque, 'N m', 0, 2000);
  return (torque > 10 ? 0.04 : 0.06) * torque;
}
