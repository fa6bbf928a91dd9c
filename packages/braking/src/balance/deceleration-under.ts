import { requireRange } from '@standstill/numerics';
import { axleLoads } from '../load/axle-loads.ts';
import { standardGravity } from '../load/standard-gravity.ts';
import type { Road } from '../set-up/road.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { undriven, type DrivenForces } from './driven-forces.ts';

/** Where and with what the car brakes. */
export interface Braking {
  readonly setUp: SetUp;
  readonly road: Road;
  /** v, m/s; 0 where not given. */
  readonly speed?: number;
  /** What the driven wheels do beside the brakes; nothing where not given. */
  readonly driven?: DrivenForces;
}

/**
 * Answers how fast the car slows under a brake force, with drag, rolling resistance and grade.
 *
 * Equation: a = (T_1 + T_2 + D_1 + D_2 + f_r ΣF_z + ½ ρ C_d A v²) / m + g sin θ.
 * Assumes: no wheel inertia; of engine and driveline only the D of `driven`.
 * Valid: any brake force from 0 N.
 *
 * @param braking - set-up, road and speed, m/s
 * @param brakeForce - T_1 + T_2, N
 * @returns m/s², positive while the car slows
 * @throws OutOfRangeError where an input cannot be
 * Source: [wong]
 * @example
 * decelerationUnder({ setUp: exampleSetUp, road: exampleRoad }, 6000) // => 5.11768
 */
export function decelerationUnder(
  { setUp, road, speed = 0, driven = undriven }: Braking,
  brakeForce: number,
): number {
  const { car } = setUp;
  const rollingResistance = requireRange('rolling resistance', car.rollingResistance, '', 0, 0.3);
  const dragArea = requireRange('drag area', car.dragArea, 'm²', 0, 20);
  const { front, rear } = axleLoads({ car, deceleration: 0, speed, road });
  const airPressure = 0.5 * road.airDensity * speed * speed;
  const alongSlope = (standardGravity * road.grade) / Math.sqrt(1 + road.grade * road.grade);
  const beside = driven.front + driven.rear + rollingResistance * (front + rear) + airPressure * dragArea;
  return (brakeForce + beside) / car.mass + alongSlope;
}
