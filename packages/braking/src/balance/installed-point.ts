import { standardGravity } from '../load/standard-gravity.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { adhesionUse } from './adhesion-use.ts';
import type { BalancePoint } from './balance-point.ts';
import { undriven, type DrivenForces } from './driven-forces.ts';
import type { InstalledLine } from './installed-line.ts';
import { masterForceFor } from './master-force-for.ts';
import { pointOnLine } from './point-on-line.ts';

/**
 * Answers the point of the installed curve at one deceleration.
 *
 * Equation: as `balanceCurve`.
 * Assumes: as `balanceCurve`. Below what the drive does by itself the point is the drive's own; a driven axle that is pushed
 * on counts as not braked.
 * Valid: as `balanceCurve`.
 *
 * @param setUp - the set-up
 * @param line - its installed line
 * @param deceleration - z, deceleration over g, 1
 * @param driven - what the driven wheels do beside the brakes, N; nothing where not given
 * @returns the point, each figure 1; undefined where the strongest foot does not reach it
 * @throws OutOfRangeError where an input cannot be
 * Source: [un-r13h]
 * @example
 * installedPoint(exampleSetUp, installedLine(exampleSetUp, usualPadTemperatures), 0.8).frontForce // => 0.637463
 */
export function installedPoint(
  setUp: SetUp,
  line: InstalledLine,
  deceleration: number,
  driven: DrivenForces = undriven,
): BalancePoint | undefined {
  const weight = setUp.car.mass * standardGravity;
  const masterForce = masterForceFor(line, Math.max(0, deceleration * weight - driven.front - driven.rear));
  if (masterForce === undefined) return undefined;
  const braked = pointOnLine(line, masterForce);
  const frontForce = Math.max(0, braked.frontForce + driven.front);
  const rearForce = Math.max(0, braked.rearForce + driven.rear);
  const use = adhesionUse({ car: setUp.car, frontForce, rearForce });
  return {
    deceleration: driven === undriven ? deceleration : use.deceleration,
    frontForce: frontForce / weight,
    rearForce: rearForce / weight,
    frontAdhesion: use.front,
    rearAdhesion: use.rear,
  };
}
