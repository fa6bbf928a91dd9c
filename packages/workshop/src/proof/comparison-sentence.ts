import type { StopSetComparison } from '@standstill/logs';
import type { UnitSystem } from '@standstill/units';
import { plural } from '../words/plural.ts';
import { signedRange } from '../words/signed-range.ts';
import { speaker } from '../words/speaker.ts';

/** Chance by luck above which a difference is not called real. */
const level = 0.05;

/** What the measured stops show, in one sentence that can be repeated to a customer. */
export function comparisonSentence(compared: StopSetComparison, units: UnitSystem): string {
  const say = speaker(units);
  const { difference, before, after, nominalSpeed } = compared;
  const from = `From ${say.plain(nominalSpeed, 'speed')}`;
  const mean = `mean ${say.central(before.mean, 'stopping-distance')} before, ${say.central(after.mean, 'stopping-distance')} after`;
  const basis = `(${mean}; ${plural(before.distances.length, 'stop')} before, ${after.distances.length} after)`;
  if (!shown(compared)) {
    const range = signedRange(difference, 'stopping-distance', say);
    return `${from} these stops show no sure difference: ${range} ${basis}.`;
  }
  return `${from} the car now stops ${signedRange(difference, 'stopping-distance', say)} on average ${basis}.`;
}

/**
 * Whether the sets show a difference: Welch's interval leaves zero out, and shuffling the stops seldom makes as much.
 *
 * @param compared - the two sets; distances in m
 * @returns true where both say so; with sets so small that no order is rare enough, where the interval does
 */
export function shown({ difference, permutation }: StopSetComparison): boolean {
  const beyondZero = difference.low > 0 || difference.high < 0;
  const rarest = 2 / permutation.arrangements;
  return beyondZero && (permutation.p <= level || rarest > level);
}
