import { intervalOf } from '../draws/interval-of.ts';
import { orNone } from '../draws/or-none.ts';
import type { PartSlot } from '../job/document/part-slots.ts';
import { distanceByPart } from '../predict/changed-parts.ts';
import type { LimitsDifference } from '../results/limits-report.ts';
import type { SetUpDifference } from '../results/prediction.ts';
import type { Settled } from '../settle/settle.ts';

export interface PartIntervalsInput {
  readonly slots: readonly PartSlot[];
  /** With the central values. */
  readonly central: SetUpDifference['byPart'];
  /** Both set-ups in each draw; what they share is the same in both. */
  readonly reference: readonly Settled[];
  readonly changed: readonly Settled[];
}

/** Stops that all draws together may take: with many changed parts there are fewer draws. */
const mostStops = 12_800;
const fewestDraws = 25;

/**
 * Gives each part's share of a difference its interval: the split is made anew for every draw.
 *
 * Equation: `distanceByPart` draw by draw, the intervals as `intervalOf`
 *
 * @param input - changed slots, central split, both set-ups in each draw
 * @returns the split with intervals, m, and how many draws they come from
 */
export function partIntervals({
  slots,
  central,
  reference,
  changed,
}: PartIntervalsInput): Pick<LimitsDifference, 'byPart' | 'byPartDraws'> {
  if (central.length === 0) return { byPart: [], byPartDraws: 0 };
  const draws = Math.min(reference.length, Math.max(fewestDraws, Math.floor(mostStops / 2 ** slots.length)));
  const columns = central.map(() => new Float64Array(draws).fill(NaN));
  let answered = 0;
  for (let row = 0; row < draws; row += 1) {
    const split = splitOrNone(slots, reference[row]!, changed[row]!);
    if (split === null) continue;
    answered += 1;
    split.forEach(({ distance_m }, index) => (columns[index]![row] = distance_m));
  }
  const byPart = central.map(({ part, title, distance_m }, index) => ({
    part,
    title,
    distance_m: intervalOf(distance_m, columns[index]!),
  }));
  return { byPart, byPartDraws: answered };
}

function splitOrNone(
  slots: readonly PartSlot[],
  reference: Settled,
  changed: Settled,
): SetUpDifference['byPart'] | null {
  const split = orNone(() => distanceByPart(slots, reference, changed));
  return split?.every(({ distance_m }) => Number.isFinite(distance_m)) === true ? split : null;
}
