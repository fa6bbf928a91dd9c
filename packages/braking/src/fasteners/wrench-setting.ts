import { requireRange } from '@standstill/numerics';

export interface WrenchSettingInput {
  /** T, N m, torque wanted at the fastener. */
  readonly torque: number;
  /** L, m, from the center of the square drive to the middle of the grip. */
  readonly wrenchLength: number;
  /** A, m, from the square drive to the center of the fastener. */
  readonly adapterLength: number;
  /** α, rad, from straight on (0, the adapter makes the wrench longer) over square (π/2) to folded back (π). */
  readonly angle: number;
}

/**
 * Answers what to set a torque wrench to where an adapter stands between it and the fastener.
 *
 * Equation: S = T L / (L + A cos α): most is to be taken off in line, nothing at a right angle.
 * Assumes: the hand pulls square to the wrench at the middle of its grip. The adapter lies in the wrench's plane.
 * Valid: torque up to 2000 N m, wrench 0.05 to 3 m, adapter up to half of the wrench, angle 0 to π.
 *
 * @param input - T, torque wanted, N m; L, wrench, m; A, adapter, m; α, angle, rad
 * @returns S, N m, setting of the wrench
 * @throws OutOfRangeError where an input cannot be
 * Source: [tm-9-254], [navy-torque]
 * @example
 * wrenchSetting({ torque: 100, wrenchLength: 0.4, adapterLength: 0.06, angle: 0 }) // => 86.9565
 */
export function wrenchSetting({ torque, wrenchLength, adapterLength, angle }: WrenchSettingInput): number {
  requireRange('torque', torque, 'N m', 0, 2000);
  requireRange('length of the wrench', wrenchLength, 'm', 0.05, 3);
  requireRange('length of the adapter', adapterLength, 'm', 0, wrenchLength / 2);
  requireRange('angle of the adapter', angle, 'rad', 0, Math.PI);
  return (torque * wrenchLength) / (wrenchLength + adapterLength * Math.cos(angle));
}
