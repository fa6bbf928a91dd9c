import type { StopSetComparison } from '@standstill/logs';
import type { UnitSystem } from '@standstill/units';
import type { Comparison } from '../results/log-report.ts';
import { plural } from '../words/plural.ts';
import { signedRange } from '../words/signed-range.ts';
import { speaker } from '../words/speaker.ts';
import type { Speaker } from '../words/speaker.ts';
import { changedToo } from './changed-too.ts';
import { controlCount } from './control/control-result.ts';
import type { Difference } from './differences/difference.ts';
import type { LeadingDifference } from './leading-difference.ts';

/** Chance by luck above which a difference is not called real. */
const level = 0.05;

interface Besides {
  /** What was different besides the set-up and is not controlled. */
  readonly differences: readonly Difference[];
  readonly expectation: Comparison['expectation'];
  readonly leading: LeadingDifference;
}

/**
 * What the measured stops show, in one sentence that can be repeated to a customer. What else was changed, and how much
 * the brakes can't have made, is part of it: a number without that would be repeated as the brakes'. So is what best
 * against best would claim, where that is more than the means carry.
 *
 * @param compared - the two sets; distances in m
 * @param besides - the difference that leads, what else differed, and what the model expects
 * @param units - of the sentence
 * @returns the sentence
 */
export function comparisonSentence(compared: StopSetComparison, besides: Besides, units: UnitSystem): string {
  const say = speaker(units);
  const { leading } = besides;
  const from = `From ${say.plain(compared.nominalSpeed, 'speed')}`;
  const range = signedRange(leading.difference, 'stopping-distance', say);
  const than = takenOut(leading);
  const too = changedToo(besides.differences);
  const best = bestClause(compared, leading, say);
  if (!leading.isShown) {
    const also = too === null ? '' : `, and ${too}`;
    return `${from} these stops show no sure difference: ${range}${than}${also} ${basis(compared, leading, say)}${best}.`;
  }
  if (too === null)
    return `${from} the car now stops ${range} on average${than} ${basis(compared, leading, say)}${best}.`;
  return `${from} the car now stops ${range}${than}, but ${too}; ${brakesPart(besides.expectation, leading.difference.value, say)}${best}.`;
}

function takenOut({ control }: LeadingDifference): string {
  if (control === null) return '';
  return control.kind === 'repeat'
    ? ' than with the old set-up, which was driven again'
    : ' than before, with what moved a car that nobody changed taken out';
}

function basis({ before, after }: StopSetComparison, { control }: LeadingDifference, say: Speaker): string {
  // Rounded alike, so that rounding makes no difference of its own.
  const half = Math.min(...[before, after].map(({ mean }) => (mean.high - mean.low) / 2));
  const [one, other] = [before, after].map(({ mean: { value } }) =>
    say.central({ value, low: value - half, high: value + half }, 'stopping-distance'),
  );
  const mean = `mean ${one ?? ''} before, ${other ?? ''} after`;
  const more =
    control === null
      ? ''
      : `, ${controlCount(control)} of the ${control.kind === 'repeat' ? 'repeat' : 'other car'}`;
  return `(${mean}; ${plural(before.distances.length, 'stop')} before, ${after.distances.length} after${more})`;
}

/** People quote the best stops: where these claim more than the means carry, the sentence says so itself. */
function bestClause(
  { bestOfEach }: StopSetComparison,
  { difference }: LeadingDifference,
  say: Speaker,
): string {
  const claimed = bestOfEach.difference;
  const isMore = difference.value < 0 ? claimed < difference.low : claimed > difference.high;
  if (!isMore) return '';
  const half = (difference.high - difference.low) / 2;
  const value = Math.abs(claimed);
  const size = say.central({ value, low: value - half, high: value + half }, 'stopping-distance');
  return `; best against best would say ${size} ${claimed < 0 ? 'shorter' : 'longer'}, but a best is partly luck`;
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
