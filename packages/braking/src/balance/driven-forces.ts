import { requireRange } from '@standstill/numerics';
import { standardGravity } from '../load/standard-gravity.ts';
import type { SetUp } from '../set-up/set-up.ts';

/** What the driven wheels do beside the brakes: N, positive slows the car, negative pushes it. Both wheels of an axle. */
export interface DrivenForces {
  /** N. */
  readonly front: number;
  /** N. */
  readonly rear: number;
}

/** Nothing but the brakes. */
export const undriven: DrivenForces = { front: 0, rear: 0 };

export interface DrivenForcesInput {
  readonly setUp: SetUp;
  /** 1, deceleration over g that the motors take back at most. */
  readonly regeneration: number;
  /** 1, push over weight of a drive that creeps at idle. */
  readonly creep: number;
}

/**
 * Answers what the driven wheels add to the brakes or take from them, in every state that counts: the engine's drag
 * with and without regeneration, and creep.
 *
 * Equation: F = M_engine / r + z_regen m g, or −z_creep m g, shared by the driveline's front share.
 * Assumes: regeneration comes on top of the friction brakes and may be there or not (full battery, low speed); creep
 * pushes when the engine does not hold back.
 * Valid: shares from 0 to 1.
 *
 * @param input - set-up with engine drag, N m, and front share of the driveline, 1; shares of weight, 1
 * @returns the states, each with the forces of both axles, N; at least one
 * @throws OutOfRangeError where an input cannot be
 * Source: [textbook-formula]
 * @example
 * drivenForces({ setUp: exampleSetUp, regeneration: 0.1, creep: 0 })[1]?.rear // => 1176.8
 */
export function drivenForces({ setUp, regeneration, creep }: DrivenForcesInput): readonly DrivenForces[] {
  const { car, frontTire, rearTire } = setUp;
  const weight = requireRange('mass', car.mass, 'kg', 50, 50_000) * standardGravity;
  const front = requireRange('front share of the driveline', car.frontDriveShare, '', 0, 1);
  const drag = requireRange('engine drag', car.engineDrag, 'N m', 0, 1e5);
  const taken = requireRange('regeneration over weight', regeneration, '', 0, 1) * weight;
  const pushed = requireRange('creep over weight', creep, '', 0, 1) * weight;
  const base: DrivenForces = {
    front: (front * drag) / requireRange('rolling radius', frontTire.rollingRadius, 'm', 0.1, 1),
    rear: ((1 - front) * drag) / requireRange('rolling radius', rearTire.rollingRadius, 'm', 0.1, 1),
  };
  return [
    base,
    ...(taken > 0 ? [{ front: base.front + front * taken, rear: base.rear + (1 - front) * taken }] : []),
    ...(pushed > 0 ? [{ front: -front * pushed, rear: -(1 - front) * pushed }] : []),
  ];
}
