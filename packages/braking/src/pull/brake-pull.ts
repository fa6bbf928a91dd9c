import { requireRange } from '@standstill/numerics';
import { installedLine } from '../balance/installed-line.ts';
import { masterForceFor } from '../balance/master-force-for.ts';
import { usualPadTemperatures, type PadTemperatures } from '../balance/pad-temperatures.ts';
import { pointOnLine } from '../balance/point-on-line.ts';
import { standardGravity } from '../load/standard-gravity.ts';
import type { FourWheels } from '../load/wheel-loads.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { axleImbalance } from './axle-imbalance.ts';
import { yawMoment } from './yaw-moment.ts';

export interface BrakePullInput {
  readonly setUp: SetUp;
  /** z, 1, deceleration over g that the foot asks of sound brakes. */
  readonly deceleration: number;
  /** 1, share of its force that each wheel's brake still gives: 0 seized open, 0.5 an oiled pad of two. */
  readonly working: FourWheels;
  readonly padTemperatures?: PadTemperatures;
}

export interface BrakePull {
  /** N, brake forces of front-left, front-right, rear-left and rear-right wheel. */
  readonly forces: FourWheels;
  /** N m, positive turns the nose to the left. */
  readonly yawMoment: number;
  /** z, 1, deceleration over g that is left. */
  readonly deceleration: number;
  /** 1, of the front axle, as `axleImbalance`. */
  readonly frontImbalance: number;
  /** 1, of the rear axle. */
  readonly rearImbalance: number;
}

/**
 * Answers how a car pulls when brakes of its wheels give only a share of their force.
 *
 * Equation: F_i = w_i T_axle / 2 at the master force that would give z with all w = 1; M by `yawMoment`.
 * Assumes: as `installedLine`; no wheel locks; the same line pressure left and right.
 * Valid: shares from 0 to 2; z that the strongest foot reaches.
 *
 * @param input - set-up; z, deceleration over g that the foot asks for, 1; shares of the four brakes, 1; pads, °C
 * @returns forces, N, yaw moment, N m, deceleration left, 1, and imbalance of each axle, 1; undefined where the
 * strongest foot does not reach z
 * @throws OutOfRangeError where an input cannot be
 * Source: [textbook-formula]
 * @example
 * brakePull({ setUp: exampleSetUp, deceleration: 0.5, working: [0, 1, 1, 1] })?.yawMoment // => -1576.8
 */
export function brakePull(input: BrakePullInput): BrakePull | undefined {
  const { setUp, working, padTemperatures = usualPadTemperatures } = input;
  const weight = requireRange('mass', setUp.car.mass, 'kg', 50, 50_000) * standardGravity;
  const asked = requireRange('deceleration over g', input.deceleration, '', 0, 3);
  const [fl, fr, rl, rr] = working.map((share) =>
    requireRange('share of a brake that works', share, '', 0, 2),
  );
  const line = installedLine(setUp, padTemperatures);
  const masterForce = masterForceFor(line, asked * weight);
  if (masterForce === undefined) return undefined;
  const { frontForce, rearForce } = pointOnLine(line, masterForce);
  const forces: FourWheels = [
    (fl! * frontForce) / 2,
    (fr! * frontForce) / 2,
    (rl! * rearForce) / 2,
    (rr! * rearForce) / 2,
  ];
  return {
    forces,
    yawMoment: yawMoment({ car: setUp.car, forces }),
    deceleration: (forces[0] + forces[1] + forces[2] + forces[3]) / weight,
    frontImbalance: axleImbalance(forces[0], forces[1]),
    rearImbalance: axleImbalance(forces[2], forces[3]),
  };
}
