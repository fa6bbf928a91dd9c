import { requireRange } from '@standstill/numerics';

/**
 * Answers from which speed the rule's high-speed test stops a car, or that it does not.
 *
 * Equation: none up to a top speed of 125 km/h, 80 % of it up to 200 km/h, 160 km/h above.
 * Valid: top speed up to 500 km/h.
 *
 * @param topSpeed - m/s, greatest speed of the car
 * @returns m/s, speed at the start of the stop; null where the test is not run
 * @throws OutOfRangeError where the speed cannot be
 * Source: [fmvss-135]
 * @example
 * highSpeedTestSpeed(190 / 3.6) // => 42.2222
 */
export function highSpeedTestSpeed(topSpeed: number): number | null {
  requireRange('top speed', topSpeed, 'm/s', 0, 500 / 3.6);
  if (topSpeed <= 125 / 3.6) return null;
  return topSpeed <= 200 / 3.6 ? 0.8 * topSpeed : 160 / 3.6;
}
