import { requireRange } from '@standstill/numerics';
import { lockOrder, type LockOrderInput } from './lock-order.ts';

export interface RearFirstDecelerations {
  /** Least deceleration over g at which the rear axle was seen to lock first, 1. */
  readonly lowest: number;
  /** Greatest deceleration over g at which the rear axle was seen to lock first, 1. */
  readonly highest: number;
}

const slipperiest = 0.1;
const steps = 60;

/**
 * Answers whether the rear axle locks first anywhere between a very slippery road and the given one. One dry road is not
 * enough to know: a valve can be right in the dry and wrong in the wet.
 *
 * Equation: `lockOrder` on roads with surface factors from 0.1 up to that of the given road, in 60 equal steps.
 * Assumes: as `lockOrder`, with ABS and EBD taken as failed. Roads between two steps are not looked at.
 * Valid: surface factor from 0.1 to 2.
 *
 * @param input - set-up; road, the grippiest to look at; v, speed, m/s; interface temperatures of the pads, °C
 * @returns least and greatest deceleration over g, 1, with the rear first; null where the front is first throughout
 * @throws OutOfRangeError where an input cannot be
 * Source: [wong]
 * @example
 * rearFirstDecelerations({ setUp: { ...exampleSetUp, rearValve: { kind: 'none' } }, road: exampleRoad }).lowest // => 0.951962
 */
export function rearFirstDecelerations(input: LockOrderInput): RearFirstDecelerations | null {
  const grippiest = requireRange('surface factor', input.road.surfaceFactor, '', slipperiest, 2);
  let lowest = Infinity;
  let highest = -Infinity;
  for (let index = 0; index <= steps; index += 1) {
    const surfaceFactor = slipperiest + ((grippiest - slipperiest) * index) / steps;
    const { first, at } = lockOrder({ ...input, road: { ...input.road, surfaceFactor } });
    if (first !== 'rear' || at === null) continue;
    lowest = Math.min(lowest, at.deceleration);
    highest = Math.max(highest, at.deceleration);
  }
  return highest < lowest ? null : { lowest, highest };
}
