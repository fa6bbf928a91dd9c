import { requireRange } from '@standstill/numerics';
import type { Car } from '../set-up/car.ts';
import { liftOffDeceleration } from './lift-off-deceleration.ts';

export interface IdealBalanceInput {
  readonly car: Car;
  /** z, deceleration over g, 1. */
  readonly deceleration: number;
}

/** Brake forces of both axles over the car's weight. */
export interface ForcesOverWeight {
  /** T_1 / P, 1. */
  readonly front: number;
  /** T_2 / P, 1. */
  readonly rear: number;
}

/**
 * Answers which brake forces use both axles' grip equally: the line that a good balance stays close to.
 *
 * Equation: T_1 / P = z (ψ + z h/L); T_2 / P = z (1 − ψ − z h/L).
 * Assumes: level road, no lift, drag or rolling resistance, both axles with the same friction.
 * Valid: z from 0 to the deceleration at which the rear wheels leave the road.
 *
 * @param input - car; z, deceleration over g, 1
 * @returns 1, front and rear brake force over weight; they sum to z
 * @throws OutOfRangeError where an input cannot be
 * Source: [gillespie]
 * @example
 * idealBalance({ car: exampleSetUp.car, deceleration: 0.8 }).front // => 0.576
 */
export function idealBalance({ car, deceleration }: IdealBalanceInput): ForcesOverWeight {
  requireRange('deceleration over g', deceleration, '', 0, liftOffDeceleration(car));
  const frontLoadShare = car.frontLoadShare + (deceleration * car.centerOfGravityHeight) / car.wheelbase;
  const front = deceleration * frontLoadShare;
  return { front, rear: deceleration - front };
}
