import { requireRange } from '@standstill/numerics';
import { axleLoads } from '../load/axle-loads.ts';
import { heldWetFactor } from '../tire/held-wet-factor.ts';
import { tirePeakForce } from '../tire/tire-peak-force.ts';
import { decelerationUnder, type Braking } from './deceleration-under.ts';
import { undriven } from './driven-forces.ts';
import type { InstalledLine } from './installed-line.ts';
import { pointOnLine } from './point-on-line.ts';

export type Axle = 'front' | 'rear';

/** Past this nothing real happens, and loads are taken from here. m/s². */
const wildestDeceleration = 100;

/**
 * Answers how much more brake force an axle can take before its first wheel locks.
 *
 * Equation: 2 F_peak(F_z of the lighter wheel) − T − D of the axle, loads at the deceleration of the same point; on water
 * the peak at this speed, by `heldWetFactor`.
 * Assumes: as `lockOrder`.
 * Valid: as `lockOrder`.
 *
 * @param braking - set-up, road and speed, m/s
 * @param line - the installed line
 * @param masterForce - F_m, force on the master cylinder, N
 * @param axle - which axle
 * @returns N, capacity less brake force of both wheels; negative once a wheel is past lock
 * @throws OutOfRangeError where an input cannot be
 * Source: [wong]
 * @example
 * axleReserve({ setUp: exampleSetUp, road: exampleRoad }, installedLine(exampleSetUp, usualPadTemperatures), 0, 'front') // => 6655.52
 */
export function axleReserve(braking: Braking, line: InstalledLine, masterForce: number, axle: Axle): number {
  const { frontForce, rearForce } = pointOnLine(line, masterForce);
  const deceleration = Math.min(wildestDeceleration, decelerationUnder(braking, frontForce + rearForce));
  const { setUp, road, speed = 0, driven = undriven } = braking;
  const loads = axleLoads({ car: setUp.car, deceleration, speed, road });
  const left = requireRange('left share of static load', setUp.car.leftLoadShare, '', 0.2, 0.8);
  const tire = axle === 'front' ? setUp.frontTire : setUp.rearTire;
  const load = Math.min(left, 1 - left) * loads[axle];
  const surfaceFactor = road.surfaceFactor * heldWetFactor({ tire, road, speed });
  const capacity = 2 * tirePeakForce({ tire, load, surfaceFactor });
  return capacity - driven[axle] - (axle === 'front' ? frontForce : rearForce);
}
