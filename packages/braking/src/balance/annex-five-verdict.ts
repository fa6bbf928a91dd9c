import type { SetUp } from '../set-up/set-up.ts';
import type { BalancePoint } from './balance-point.ts';
import { undriven, type DrivenForces } from './driven-forces.ts';
import { installedLine } from './installed-line.ts';
import { installedPoint } from './installed-point.ts';
import { leastBrakingRate } from './least-braking-rate.ts';
import { liftOffDeceleration } from './lift-off-deceleration.ts';
import { usualPadTemperatures, type PadTemperatures } from './pad-temperatures.ts';
import { torqueWheelLine } from './torque-wheel-line.ts';

export interface AnnexFiveInput {
  readonly setUp: SetUp;
  readonly padTemperatures?: PadTemperatures;
  /** What the driven wheels do beside the brakes; nothing where not given. */
  readonly driven?: DrivenForces;
}

export interface AnnexFiveVerdict {
  /** The rear axle never uses more friction than the front axle for z from 0.15 to 0.80. */
  readonly rearBelowFront: boolean;
  /** Neither axle uses more friction than z ≥ 0.1 + 0.7 (k − 0.2) allows, for k from 0.2 to 0.8. */
  readonly adhesionWithinLimit: boolean;
  /** The rear axle stays under z = 0.9 k for z from 0.15 to 0.80, as FMVSS 135 S7.4 asks where wheel torque is measured. */
  readonly rearUnderTorqueWheelLine: boolean;
  /** First points at which each rule is broken; undefined where it is kept. */
  readonly rearAboveFrontAt: BalancePoint | undefined;
  readonly overLimitAt: BalancePoint | undefined;
  readonly rearOverTorqueWheelLineAt: BalancePoint | undefined;
  /** z, 1, up to which the strongest foot let the rules be looked at; 0.8 where all of the range was. */
  readonly examinedTo: number;
  /** True where the car has ABS: then the regulation judges it otherwise and this is a yardstick only. */
  readonly yardstickOnly: boolean;
}

const step = 0.005;

/**
 * Answers whether the brakes as fitted would keep the two rules of UN R13-H Annex 5 on adhesion used.
 *
 * Equation: f_2 ≤ f_1 for 0.15 ≤ z ≤ 0.80; f_2 ≤ z / 0.9 there; z ≥ 0.1 + 0.7 (k − 0.2) with k = max(f_1, f_2), 0.2 ≤ k ≤ 0.8.
 * Assumes: as `balanceCurve`; looked at in steps of 0.005 of z, for the load state given (the regulation asks for both).
 * Valid: a yardstick, not a type approval.
 *
 * @param input - set-up; interface temperatures of the pads, °C
 * @returns the two verdicts, where each is first broken (z, 1), and up to which z, 1, they could be looked at
 * @throws OutOfRangeError where an input cannot be
 * Source: [un-r13h], [fmvss-135]
 * @example
 * annexFiveVerdict({ setUp: exampleSetUp }).rearBelowFront // => true
 */
export function annexFiveVerdict({
  setUp,
  padTemperatures = usualPadTemperatures,
  driven = undriven,
}: AnnexFiveInput): AnnexFiveVerdict {
  const points = examinedPoints(setUp, padTemperatures, driven);
  const rearAboveFrontAt = points.find(isRearAboveFront);
  const overLimitAt = points.find(isOverLimit);
  const rearOverTorqueWheelLineAt = points.find(isRearOverTorqueWheelLine);
  return {
    rearBelowFront: rearAboveFrontAt === undefined,
    adhesionWithinLimit: overLimitAt === undefined,
    rearUnderTorqueWheelLine: rearOverTorqueWheelLineAt === undefined,
    rearAboveFrontAt,
    overLimitAt,
    rearOverTorqueWheelLineAt,
    examinedTo: points.at(-1)?.deceleration ?? 0,
    yardstickOnly: setUp.antilock.kind !== 'none',
  };
}

function examinedPoints(
  setUp: SetUp,
  padTemperatures: PadTemperatures,
  driven: DrivenForces,
): readonly BalancePoint[] {
  const line = installedLine(setUp, padTemperatures);
  const end = Math.min(0.8, 0.999 * liftOffDeceleration(setUp.car));
  const points: BalancePoint[] = [];
  for (let index = 0; ; index += 1) {
    const deceleration = 0.1 + index * step;
    if (deceleration > end + 1e-9) return points;
    const point = installedPoint(setUp, line, deceleration, driven);
    if (point === undefined) return points;
    points.push(point);
  }
}

function isRearAboveFront({ deceleration, frontAdhesion, rearAdhesion }: BalancePoint): boolean {
  return deceleration >= 0.15 - 1e-9 && rearAdhesion > frontAdhesion * (1 + 1e-12);
}

function isOverLimit({ deceleration, frontAdhesion, rearAdhesion }: BalancePoint): boolean {
  const used = Math.max(frontAdhesion, rearAdhesion);
  if (used < 0.2 || used > 0.8) return false;
  return deceleration < leastBrakingRate(used) - 1e-12;
}

function isRearOverTorqueWheelLine({ deceleration, rearAdhesion }: BalancePoint): boolean {
  return deceleration >= 0.15 - 1e-9 && rearAdhesion > torqueWheelLine(deceleration) * (1 + 1e-12);
}
