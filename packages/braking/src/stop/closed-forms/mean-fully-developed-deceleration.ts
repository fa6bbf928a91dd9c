import { requireRange } from '@standstill/numerics';

export interface SpeedGates {
  /** v_b, m/s: 0.8 of the speed at the start. */
  readonly highSpeed: number;
  /** v_e, m/s: 0.1 of the speed at the start. */
  readonly lowSpeed: number;
  /** s_b, m, where the car passes v_b. */
  readonly distanceAtHigh: number;
  /** s_e, m, where the car passes v_e. */
  readonly distanceAtLow: number;
}

/**
 * Answers the mean fully developed deceleration between two speed gates.
 *
 * Equation: d_m = (v_b² − v_e²) / (2 (s_e − s_b)); with km/h 25.92 stands for the 2.
 * Assumes: the gates are 0.8 and 0.1 of the speed at the start, as the regulation has them.
 * Valid: v_b above v_e, s_e after s_b.
 *
 * @param gates - v_b and v_e, speeds, m/s; s_b and s_e, places, m
 * @returns m/s², mean fully developed deceleration
 * @throws OutOfRangeError where an input cannot be
 * Source: [un-r13]
 * @example
 * meanFullyDevelopedDeceleration({ highSpeed: 20, lowSpeed: 2.5, distanceAtHigh: 15, distanceAtLow: 39.609375 }) // => 8
 */
export function meanFullyDevelopedDeceleration(gates: SpeedGates): number {
  const { highSpeed, lowSpeed, distanceAtHigh, distanceAtLow } = gates;
  requireRange('speed at the high gate', highSpeed, 'm/s', 0, 150);
  requireRange('speed at the low gate', lowSpeed, 'm/s', 0, highSpeed);
  const between = requireRange('distance between the gates', distanceAtLow - distanceAtHigh, 'm', 1e-9, 1e7);
  return ((highSpeed - lowSpeed) * (highSpeed + lowSpeed)) / (2 * between);
}
