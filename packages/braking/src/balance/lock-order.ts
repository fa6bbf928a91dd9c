import { bracketedRoot, requireRange } from '@standstill/numerics';
import { boosterInput } from '../foot-to-pressure/booster-input.ts';
import { rodForce } from '../foot-to-pressure/rod-force.ts';
import { standardGravity } from '../load/standard-gravity.ts';
import type { Road } from '../set-up/road.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { axleReserve, type Axle } from './axle-reserve.ts';
import { decelerationUnder } from './deceleration-under.ts';
import type { DrivenForces } from './driven-forces.ts';
import { installedLine, type InstalledLine } from './installed-line.ts';
import { lineCorners } from './line-corners.ts';
import { usualPadTemperatures, type PadTemperatures } from './pad-temperatures.ts';
import { pointOnLine } from './point-on-line.ts';

export interface LockOrderInput {
  readonly setUp: SetUp;
  readonly road: Road;
  /** v, m/s; 0 (no drag, no lift) where not given. */
  readonly speed?: number;
  readonly padTemperatures?: PadTemperatures;
  /** What the driven wheels do beside the brakes; nothing where not given. */
  readonly driven?: DrivenForces;
}

/** What foot, lines and car do at one point of the installed line. */
export interface LockPoint {
  /** Deceleration of the car over g, 1. */
  readonly deceleration: number;
  /** N at the pedal pad; 0 where the booster's jump-in already does it at the first touch. */
  readonly pedalForce: number;
  /** Pa. */
  readonly frontPressure: number;
  /** Pa. */
  readonly rearPressure: number;
  /** Front brake force over the sum of both, 1. */
  readonly frontForceShare: number;
}

export interface LockOrder {
  readonly first: 'front' | 'rear' | 'both' | 'none';
  /** Where the first axle locks; null where the strongest foot (1000 N) locks none. */
  readonly at: LockPoint | null;
  /** Where the front axle would lock if the rear one did not; null where the strongest foot cannot. */
  readonly front: LockPoint | null;
  /** Where the rear axle would lock if the front one did not; null where the strongest foot cannot. */
  readonly rear: LockPoint | null;
  /** What the strongest foot gives where nothing locks: without tires' limit where something does. */
  readonly atStrongestFoot: LockPoint;
}

/**
 * Answers which axle locks first, and at which deceleration, pedal force and pressures, with ABS and EBD taken as failed.
 *
 * Equation: axle force = capacity of its axle, with loads at a = (T_1 + T_2 + f_r ΣF_z + ½ ρ C_d A v²) / m + g sin θ;
 * capacity = 2 μ_0 λ λ_w F_z0 (F_z / F_z0)^(1 − n) of the lighter wheel, λ_w what water leaves at this speed
 * (`heldWetFactor`).
 * What the driven wheels do beside the brakes counts for both.
 * Assumes: an axle counts as locked when the first of its wheels does; steady pitch; the two axles each by themselves,
 * along the line on which nothing locks; rolling resistance slows the car beside the brakes.
 * Valid: surface factor 0.02 to 2, foot up to 1000 N. The answer is exact to rounding: between two corners of the
 * installed line the force over the capacity is convex, so no crossing is missed.
 *
 * @param input - set-up; road; v, speed, m/s; interface temperatures of the pads, °C
 * @returns the first axle to lock; deceleration over g, 1, pedal force, N, and pressures, Pa, there and for each axle
 * @throws OutOfRangeError where an input cannot be
 * Source: [wong]
 * @example
 * lockOrder({ setUp: exampleSetUp, road: exampleRoad }).first // => 'front'
 */
export function lockOrder(input: LockOrderInput): LockOrder {
  requireRange('surface factor', input.road.surfaceFactor, '', 0.02, 2);
  const line = installedLine(input.setUp, input.padTemperatures ?? usualPadTemperatures);
  const frontForce = masterForceAtLock(input, line, 'front');
  const rearForce = masterForceAtLock(input, line, 'rear');
  const first = firstOf(frontForce, rearForce);
  const front = frontForce === undefined ? null : lockPoint(input, line, frontForce);
  const rear = rearForce === undefined ? null : lockPoint(input, line, rearForce);
  return {
    first,
    at: first === 'rear' ? rear : front,
    front,
    rear,
    atStrongestFoot: lockPoint(input, line, line.greatestMasterForce),
  };
}

function firstOf(front: number | undefined, rear: number | undefined): LockOrder['first'] {
  if (front === undefined) return rear === undefined ? 'none' : 'rear';
  if (rear === undefined) return 'front';
  if (Math.abs(front - rear) <= 1e-9 * Math.max(front, rear)) return 'both';
  return front < rear ? 'front' : 'rear';
}

function masterForceAtLock(input: LockOrderInput, line: InstalledLine, axle: Axle): number | undefined {
  const over = (masterForce: number) => -axleReserve(input, line, masterForce, axle);
  let low = 0;
  for (const high of lineCorners(line)) {
    if (high === 0 && over(0) > 0) return 0; // the drive alone locks it
    if (over(high) > 0) return bracketedRoot(over, { low, high, tolerance: 1e-12 * high });
    low = high;
  }
  return undefined;
}

function lockPoint(input: LockOrderInput, line: InstalledLine, masterForce: number): LockPoint {
  const { frontPressure, rearPressure, frontForce, rearForce } = pointOnLine(line, masterForce);
  const rod = boosterInput({ booster: input.setUp.booster, outputForce: masterForce });
  return {
    deceleration: decelerationUnder(input, frontForce + rearForce) / standardGravity,
    pedalForce: rod / rodForce({ pedal: input.setUp.pedal, force: 1 }),
    frontPressure,
    rearPressure,
    frontForceShare: frontShare(line, frontForce, rearForce),
  };
}

/** Where neither axle brakes yet, the share that they start with at equal pressure over push-out. */
function frontShare(line: InstalledLine, frontForce: number, rearForce: number): number {
  const sum = frontForce + rearForce;
  if (sum > 0) return frontForce / sum;
  return line.frontForcePerPressure / (line.frontForcePerPressure + line.rearForcePerPressure);
}
