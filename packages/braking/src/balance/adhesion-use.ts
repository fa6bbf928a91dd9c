import { requireRange } from '@standstill/numerics';
import { standardGravity } from '../load/standard-gravity.ts';
import type { Car } from '../set-up/car.ts';
import { liftOffDeceleration } from './lift-off-deceleration.ts';

export interface AdhesionUseInput {
  readonly car: Car;
  /** T_1, N, brake force of both front wheels. */
  readonly frontForce: number;
  /** T_2, N, brake force of both rear wheels. */
  readonly rearForce: number;
}

export interface AdhesionUse {
  /** z, deceleration over g that the two forces give, 1. */
  readonly deceleration: number;
  /** f_1, brake force over load of the front axle, 1. */
  readonly front: number;
  /** f_2, brake force over load of the rear axle, 1. */
  readonly rear: number;
}

/**
 * Answers how much friction each axle would need for the brake forces that it has, as UN R13-H Annex 5 counts it.
 *
 * Equation: z = (T_1 + T_2) / P; f_1 = T_1 / (P_1 + z (h/E) P); f_2 = T_2 / (P_2 − z (h/E) P).
 * Assumes: level road, no lift, drag or rolling resistance.
 * Valid: below the deceleration at which the rear wheels leave the road.
 *
 * @param input - car; T_1 and T_2, brake forces of the front and the rear axle, N
 * @returns z, deceleration over g, 1; f_1 and f_2, friction used by the front and the rear axle, 1
 * @throws OutOfRangeError where an input cannot be
 * Source: [un-r13h]
 * @example
 * adhesionUse({ car: exampleSetUp.car, frontForce: 6000, rearForce: 2000 }).front // => 0.732595
 */
export function adhesionUse({ car, frontForce, rearForce }: AdhesionUseInput): AdhesionUse {
  requireRange('front brake force', frontForce, 'N', 0, 1e6);
  requireRange('rear brake force', rearForce, 'N', 0, 1e6);
  const weight = requireRange('mass', car.mass, 'kg', 50, 50_000) * standardGravity;
  const deceleration = (frontForce + rearForce) / weight;
  requireRange('deceleration over g', deceleration, '', 0, 0.9999 * liftOffDeceleration(car));
  const frontShare = car.frontLoadShare + (deceleration * car.centerOfGravityHeight) / car.wheelbase;
  return {
    deceleration,
    front: frontForce / (frontShare * weight),
    rear: rearForce / ((1 - frontShare) * weight),
  };
}
