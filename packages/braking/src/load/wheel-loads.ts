import { requireRange } from '@standstill/numerics';
import { axleLoads, type AxleLoadsInput } from './axle-loads.ts';

/** Front-left, front-right, rear-left, rear-right. */
export type FourWheels = readonly [number, number, number, number];

/**
 * Answers how much load each wheel carries while the car slows in a straight line.
 *
 * Equation: F_z,left = λ F_z,axle; F_z,right = (1 − λ) F_z,axle.
 * Assumes: the left-hand share is the same on both axles and braking does not move load sideways.
 * Valid: as `axleLoads`, left-hand share from 0.2 to 0.8.
 *
 * @param input - car; a, deceleration, m/s²; v, speed, m/s; road with grade (rise over run, 1) and air density, kg/m³
 * @returns N, load of front-left, front-right, rear-left and rear-right wheel
 * @throws OutOfRangeError where an input cannot be
 * Source: [gillespie]
 * @example
 * wheelLoads({ car: exampleSetUp.car, deceleration: 0, speed: 0, road: exampleRoad })[0] // => 3295.03
 */
export function wheelLoads(input: AxleLoadsInput): FourWheels {
  const left = requireRange('left share of static load', input.car.leftLoadShare, '', 0.2, 0.8);
  const { front, rear } = axleLoads(input);
  return [left * front, (1 - left) * front, left * rear, (1 - left) * rear];
}
