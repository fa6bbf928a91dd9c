import { requireRange } from '@standstill/numerics';
import type { SetUp } from '../set-up/set-up.ts';
import { quickStop, stopWorkspace } from '../stop/quick-stop.ts';
import type { StopInput } from '../stop/stop-input.ts';
import { changedSlots, withPartsFrom, type PartSlot } from './part-slot.ts';
import { shapley } from './shapley.ts';

export interface PartBudgetInput extends Omit<StopInput, 'setUp'> {
  /** The set-up as it is. */
  readonly from: SetUp;
  /** The set-up as it would be. */
  readonly to: SetUp;
  /** Slots to tell apart; every slot in which the two differ where left out. */
  readonly slots?: readonly PartSlot[];
}

export interface PartShare {
  readonly slot: PartSlot;
  /** m that the part adds to the stop; negative where it shortens it. */
  readonly distance: number;
}

export interface PartBudget {
  /** m, as it is. */
  readonly before: number;
  /** m, as it would be, in the slots told apart. */
  readonly after: number;
  /** One share per slot; together they are after less before. */
  readonly shares: readonly PartShare[];
}

/**
 * Answers which part buys which feet: the change of the stop between two set-ups, split over the parts that differ.
 *
 * Equation: Shapley value of the stopping distance over the slots, all combinations by `quickStop`.
 * Assumes: as `quickStop`. Every mix of old and new parts is counted, also such as could not be bolted together: that is
 * what makes the shares independent of order.
 * Valid: up to 14 differing slots; every mix comes to rest.
 *
 * @param input - both set-ups; road, foot, speed, m/s, and the rest as for `quickStop`; slots to tell apart
 * @returns m: before, after, and one share per slot
 * @throws OutOfRangeError where an input cannot be, too many slots differ, or a mix does not come to rest
 * Source: [shapley-1953]
 * @example
 * partBudget({ from: exampleSetUp, to: exampleSetUp, road: exampleRoad, foot: { force: 300, rampTime: 0.2 }, speed: 27.8 }).shares.length // => 0
 */
export function partBudget({
  from,
  to,
  slots = changedSlots(from, to),
  ...stop
}: PartBudgetInput): PartBudget {
  requireRange('number of slots that differ', slots.length, '', 0, 14);
  const march = stopWorkspace();
  const all = 2 ** slots.length - 1;
  let before = Number.NaN;
  let after = Number.NaN;
  const distanceWith = (set: number): number => {
    const taken = slots.filter((_, index) => (set & (1 << index)) !== 0);
    const { distance } = quickStop({ ...stop, setUp: withPartsFrom(from, to, taken) }, march);
    if (set === 0) before = distance;
    if (set === all) after = distance;
    return requireRange('stopping distance', distance, 'm', 0, 1e6);
  };
  const shares = shapley(slots.length, distanceWith);
  return {
    before,
    after,
    shares: slots.map((slot, index) => ({ slot, distance: shares[index] ?? Number.NaN })),
  };
}
