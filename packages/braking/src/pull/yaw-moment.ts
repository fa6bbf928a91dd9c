import { requireRange } from '@standstill/numerics';
import type { FourWheels } from '../load/wheel-loads.ts';
import type { Car } from '../set-up/car.ts';

export interface YawMomentInput {
  readonly car: Pick<Car, 'frontTrack' | 'rearTrack'>;
  /** N, brake forces of front-left, front-right, rear-left and rear-right wheel. */
  readonly forces: FourWheels;
}

/**
 * Answers the moment by which unequal brake forces turn the car.
 *
 * Equation: M = (t_f/2)(F_fl − F_fr) + (t_r/2)(F_rl − F_rr).
 * Assumes: level road, no steering; scrub radius and lateral tire force are not counted.
 * Valid: tracks 0.5 to 3 m.
 *
 * @param input - car with its track widths, m; brake forces of the four wheels, N
 * @returns N m, positive turns the nose to the left
 * @throws OutOfRangeError where an input cannot be
 * Source: [textbook-formula]
 * @example
 * yawMoment({ car: exampleSetUp.car, forces: [3000, 2000, 800, 800] }) // => 720
 */
export function yawMoment({ car, forces }: YawMomentInput): number {
  const front = requireRange('front track width', car.frontTrack, 'm', 0.5, 3);
  const rear = requireRange('rear track width', car.rearTrack, 'm', 0.5, 3);
  for (const force of forces) requireRange('brake force of a wheel', force, 'N', 0, 1e6);
  const [frontLeft, frontRight, rearLeft, rearRight] = forces;
  return (front / 2) * (frontLeft - frontRight) + (rear / 2) * (rearLeft - rearRight);
}
