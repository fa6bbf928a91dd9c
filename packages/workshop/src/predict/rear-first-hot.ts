import type { RepeatedStop } from '@standstill/braking';
import type { Settled } from '../settle/settle.ts';
import { loadStates } from './load-state.ts';
import type { LoadState } from './load-state.ts';
import { padMoments, rearFirstRange } from './lock-looks.ts';
import type { RearFirstHot } from './warnings/rear-first.ts';

/**
 * The first of the repeated stops in which the rear locks first with the central values, and where it does from then on;
 * the pads get hotter with every stop, so that the first one alone would make the danger look small.
 *
 * @param settled - the set-up and its question
 * @param row - the repeated stops
 * @param states - which states of load; both where left out
 * @returns the stop, and the decelerations over g of all moments together; null where there is none
 */
export function rearFirstHot(
  settled: Settled,
  row: readonly RepeatedStop[],
  states?: readonly LoadState[],
): RearFirstHot | null {
  const found = padMoments(row).flatMap(({ stop, pads }) => {
    const range = rearFirstRange(settled, pads, states);
    return range === null ? [] : [{ stop, range }];
  });
  const [first] = found;
  if (first === undefined) return null;
  const ranges = found.map(({ range }) => range);
  const range = {
    lowest: Math.min(...ranges.map(({ lowest }) => lowest)),
    highest: Math.max(...ranges.map(({ highest }) => highest)),
    states: loadStates.filter((state) => ranges.some((one) => one.states.includes(state))),
    byDriveAlone: ranges.every(({ byDriveAlone }) => byDriveAlone),
  };
  return { stop: first.stop, of: row.length, range };
}
