import { requireRange } from '@standstill/numerics';

/**
 * Answers from which speed FMVSS 135 has the wheel-lock sequence tested on a road that allows a braking ratio.
 *
 * Equation: 65 km/h up to a braking ratio of 0.50, 100 km/h above it.
 * Valid: braking ratio 0.15 to 0.80.
 *
 * @param brakingRatio - deceleration over g that the road allows, 1
 * @returns m/s, test speed
 * @throws OutOfRangeError outside the standard's range
 * Source: [fmvss-135]
 * @example
 * lockSequenceSpeed(0.5) // => 18.0556
 */
export function lockSequenceSpeed(brakingRatio: number): number {
  const ratio = requireRange('braking ratio', brakingRatio, '', 0.15, 0.8);
  return (ratio <= 0.5 ? 65 : 100) / 3.6;
}
