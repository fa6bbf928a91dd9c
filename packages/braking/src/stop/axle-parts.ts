import { requireRange } from '@standstill/numerics';
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
  /** J_d, kg m², what of the driveline turns with both wheels. */
  readonly drivelineInertia: number;
  /** M_e, N m, by which the engine holds back both wheels together. */
  readonly engineDrag: number;
  /** Static left-hand load over weight, 1. */
  readonly leftLoadShare: number;
  readonly road: Road;
}

/**
 * Answers the front axle's parts of a set-up.
 *
 * @param setUp - the set-up
 * @param road - where the stop happens
 * @returns the parts; inertias in kg m², engine drag in N m, load share in 1
 * @throws OutOfRangeError where the share of the drive cannot be
 * Source: [geometry]
 * @example
 * frontParts(exampleSetUp, exampleRoad).wheelInertia // => 1
 */
export function frontParts({ car, frontBrake, frontTire }: SetUp, road: Road): AxleParts {
  const share = requireRange('share of the drive on the front axle', car.frontDriveShare, '', 0, 1);
  return {
    brake: frontBrake,
    tire: frontTire,
    wheelInertia: car.frontWheelInertia,
    drivelineInertia: share * car.drivelineInertia,
    engineDrag: share * car.engineDrag,
    leftLoadShare: car.leftLoadShare,
    road,
  };
}

/**
 * Answers the rear axle's parts of a set-up.
 *
 * @param setUp - the set-up
 * @param road - where the stop happens
 * @returns the parts; inertias in kg m², engine drag in N m, load share in 1
 * @throws OutOfRangeError where the share of the drive cannot be
 * Source: [geometry]
 * @example
 * rearParts(exampleSetUp, exampleRoad).wheelInertia // => 0.9
 */
export function rearParts({ car, rearBrake, rearTire }: SetUp, road: Road): AxleParts {
  const share = 1 - requireRange('share of the drive on the front axle', car.frontDriveShare, '', 0, 1);
  return {
    brake: rearBrake,
    tire: rearTire,
    wheelInertia: car.rearWheelInertia,
    drivelineInertia: share * car.drivelineInertia,
    engineDrag: share * car.engineDrag,
    leftLoadShare: car.leftLoadShare,
    road,
  };
}
