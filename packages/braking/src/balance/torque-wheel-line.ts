import { requireRange } from '@standstill/numerics';

/**
 * Answers how much friction the rear axle may use at a deceleration where wheel torque is measured, as FMVSS 135 has it.
 *
 * Equation: k = z / 0.9.
 * Valid: z from 0.15 to 0.80.
 *
 * @param deceleration - z, deceleration over g, 1
 * @returns k, 1, most friction of the rear axle
 * @throws OutOfRangeError outside the standard's range
 * Source: [fmvss-135]
 * @example
 * torqueWheelLine(0.45) // => 0.5
 */
export function torqueWheelLine(deceleration: number): number {
  return requireRange('deceleration over g', deceleration, '', 0.149, 0.81) / 0.9;
}
