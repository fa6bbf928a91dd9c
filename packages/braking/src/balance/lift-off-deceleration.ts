import { requireRange } from '@standstill/numerics';
import type { Car } from '../set-up/car.ts';

/**
 * Answers the deceleration at which the rear wheels would leave the road: every balance picture ends there.
 *
 * Equation: z = (1 − ψ) L / h.
 * Assumes: level road, no lift, steady pitch.
 * Valid: h from 10 mm to 4 m.
 *
 * @param car - car with ψ, front load share, 1; L, wheelbase, m; h, height of the center of gravity, m
 * @returns 1, deceleration over g
 * @throws OutOfRangeError where an input cannot be
 * Source: [gillespie]
 * @example
 * liftOffDeceleration(exampleSetUp.car) // => 2.2
 */
export function liftOffDeceleration(car: Car): number {
  requireRange('center of gravity height', car.centerOfGravityHeight, 'm', 0.01, 4);
  requireRange('front share of static load', car.frontLoadShare, '', 0.02, 0.98);
  requireRange('wheelbase', car.wheelbase, 'm', 0.5, 10);
  return ((1 - car.frontLoadShare) * car.wheelbase) / car.centerOfGravityHeight;
}
