import type { AxleBrake } from '../set-up/axle-brake.ts';
import type { Road } from '../set-up/road.ts';
import type { SetUp } from '../set-up/set-up.ts';
import type { Tire } from '../set-up/tire.ts';

/** What of a set-up decides what one axle does in a stop. */
export interface AxleParts {
  readonly brake: AxleBrake;
  readonly tire: Tire;
  /** J, kg m², one wheel. */
  readonly wheelInertia: number;
  /** Static left-hand load over weight, 1. */
  readonly leftLoadShare: number;
  readonly road: Road;
}

/**
 * Answers the front axle's parts of a set-up.
 *
 * @param setUp - the set-up
 * @param road - where the stop happens
 * @returns the parts; inertia in kg m², load share in 1
 * Source: [geometry]
 * @example
 * frontParts(exampleSetUp, exampleRoad).wheelInertia // => 1
 */
export function frontParts({ car, frontBrake, frontTire }: SetUp, road: Road): AxleParts {
  const { frontWheelInertia, leftLoadShare } = car;
  return { brake: frontBrake, tire: frontTire, wheelInertia: frontWheelInertia, leftLoadShare, road };
}

/**
 * Answers the rear axle's parts of a set-up.
 *
 * @param setUp - the set-up
 * @param road - where the stop happens
 * @returns the parts; inertia in kg m², load share in 1
 * Source: [geometry]
 * @example
 * rearParts(exampleSetUp, exampleRoad).wheelInertia // => 0.9
 */
export function rearParts({ car, rearBrake, rearTire }: SetUp, road: Road): AxleParts {
  const { rearWheelInertia, leftLoadShare } = car;
  return { brake: rearBrake, tire: rearTire, wheelInertia: rearWheelInertia, leftLoadShare, road };
}
