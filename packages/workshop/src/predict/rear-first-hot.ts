import type { RepeatedStop } from '@standstill/braking';
import type { Settled } from '../settle/settle.ts';
import type { LoadState } from './load-state.ts';
import { padMoments, rearFirstRange } from './lock-looks.ts';
import type { RearFirstHot } from './warnings/rear-first.ts';

/** The first of the repeated stops in which the rear locks first with the central values; null where there is none. */
export function rearFirstHot(
  settled: Settled,
  row: readonly RepeatedStop[],
  states?: readonly LoadState[],
): RearFirstHot | null {
  for (const { stop, pads } of padMoments(row)) {
    const range = rearFirstRange(settled, pads, states);
    if (range !== null) return { stop, of: row.length, range };
  }
  return null;
}
