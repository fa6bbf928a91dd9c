import type { StopSetComparison } from '@standstill/logs';
import type { UnitSystem } from '@standstill/units';
import type { Comparison } from '../results/log-report.ts';
import { plural } from '../words/plural.ts';
import { signedRange } from '../words/signed-range.ts';
import { speaker } from '../words/speaker.ts';
import type { Speaker } from '../words/speaker.ts';
import { changedToo } from './changed-too.ts';

/** Chance by luck above which a difference is not called real. */
const level = 0.05;

interface Besides {
  /** What was different besides the set-up. */
  readonly confounders: readonly string[];
  readonly expectation: Comparison['expectation'];
}

/**
 * What the measured stops show, in one sentence that can be repeated to a customer. What else was changed, and how much
 * the brakes can't have made, is part of it: a number without that would be repeated as the brakes'.
 *
 * @param compared - the two sets; distances in m
 * @param besides - what else differed, and what the model expects
 * @param units - of the sentence
 * @returns the sentence
 */
export function comparisonSentence(compared: StopSetComparison, besides: Besides, units: UnitSystem): string {
  const say = speaker(units);
  const { difference, nominalSpeed } = compared;
  const from = `From ${say.plain(nominalSpeed, 'speed')}`;
  const range = signedRange(difference, 'stopping-distance', say);
  const too = changedToo(besides.confounders);
  if (!shown(compared)) {
    const also = too === null ? '' : `, and ${too}`;
    return `${from} these stops show no sure difference: ${range}${also} ${basis(compared, say)}.`;
  }
  if (too === null) return `${from} the car now stops ${range} on average ${basis(compared, say)}.`;
  return `${from} the car now stops ${range}, but ${too}; ${brakesPart(besides.expectation, difference.value, say)}.`;
}

function basis({ before, after }: StopSetComparison, say: Speaker): string {
  const mean = `mean ${say.central(before.mean, 'stopping-distance')} before, ${say.central(after.mean, 'stopping-distance')} after`;
  return `(${mean}; ${plural(before.distances.length, 'stop')} before, ${after.distances.length} after)`;
}

/** How much of a change is the brakes', where something else was changed with them. */
function brakesPart(expectation: Comparison['expectation'], measured: number, say: Speaker): string {
  if (expectation === null) return "these stops alone can't say how much of it is the brakes";
  const { expected_m: expected, unexplained_m: unexplained } = expectation;
  const against = measured < 0 ? expected.low > 0 : expected.high < 0;
  if (against)
    return `the brakes alone were expected to make it ${signedRange(expected, 'stopping-distance', say)}`;
  const { low, high } = unexplained;
  if (low <= 0 && high >= 0) return 'the brakes could explain all of it, and need not';
  const size = say.range(Math.abs(low), Math.abs(high), 'stopping-distance');
  return low > 0 === measured > 0
    ? `${size} of it is more than the brakes explain`
    : `the brakes alone were expected to make ${size} more of it`;
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
