import { endOf, signedRange } from '../../words/signed-range.ts';
import { speaker } from '../../words/speaker.ts';
import type { Speaker } from '../../words/speaker.ts';
import type { Explained } from '../explained.ts';
import type { Change } from '../change/change-explained.ts';
import { plural } from '../../words/plural.ts';
import { tiresChanged } from './tires-changed.ts';

/**
 * How much of the gain is the brakes, in one sentence that can be repeated to a customer.
 *
 * @param about - what was found
 * @returns the sentence
 */
export function reconciliationSentence(about: Explained): string {
  const { change, fits, speed, units, compared } = about;
  const say = speaker(units);
  const from = `From ${say.plain(speed, 'speed')}`;
  if (change === null) return learnedOnly(about, from);
  if (!fits) return misfit(about, change, from, say);
  if (compared === null || change.measured_m === null) return expectedOnly(about, change, from, say);
  if (change.share === null || change.unexplained_m === null) return nothingSure(change, from, say);
  return shared(about, change, from, say);
}

function learnedOnly({ measured, fits }: Explained, from: string): string {
  const stops = plural(measured.before.stops.length, 'stop');
  return fits
    ? `${from} the ${stops} fit what the job says of the car; no change was asked about.`
    : `${from} the ${stops} do not fit what the job says of the car within its spreads: something is not as it says.`;
}

function misfit({ measured }: Explained, { measured_m }: Change, from: string, say: Speaker): string {
  const stops = plural(measured.before.stops.length, 'stop');
  const gained =
    measured_m === null
      ? ''
      : `${from} the car now stops ${signedRange(measured_m, 'stopping-distance', say)}, but `;
  const begin = gained === '' ? 'The' : 'the';
  return `${gained}${begin} ${stops} before do not fit the job within its spreads, so how much of a change is the brakes can't be said; find out first what is not as the job says.`;
}

function expectedOnly(
  { after, measured }: Explained,
  { expected_m, byJob_m }: Change,
  from: string,
  say: Speaker,
): string {
  const stops = plural(measured.before.stops.length, 'stop');
  const words = signedRange(expected_m, 'stopping-distance', say);
  return `${from} the brakes of "${after?.title ?? ''}" are expected to stop the car ${words}, by what the ${stops} before teach; by the job alone it was ${signedRange(byJob_m, 'stopping-distance', say)}.`;
}

function nothingSure({ measured_m, expected_m }: Change, from: string, say: Speaker): string {
  const measured = measured_m === null ? '' : signedRange(measured_m, 'stopping-distance', say);
  return `${from} the measured change can't be told from none (${measured}), so no share of it can be given to the brakes; they were expected to make it ${signedRange(expected_m, 'stopping-distance', say)}.`;
}

function shared(about: Explained, change: Change, from: string, say: Speaker): string {
  const { measured_m: measured, expected_m: expected, unexplained_m: left, share } = change;
  if (measured === null || left === null || share === null) return '';
  const gain = measured.value < 0;
  const all = say.range(Math.abs(measured.low), Math.abs(measured.high), 'stopping-distance');
  const way = gain ? 'shorter' : 'longer';
  const begin = `${from}, of the ${all} that the car now stops ${way}, `;
  const against = gain ? expected.low >= 0 : expected.high <= 0;
  if (against)
    return expected.low === 0 && expected.high === 0
      ? `${begin}the brakes explain nothing: by the model the two set-ups stop alike. It is ${culprits(about)}.`
      : `${begin}the brakes explain nothing: they were expected to make it ${signedRange(expected, 'stopping-distance', say)}. It is ${culprits(about)}.`;
  const whole = left.low <= 0 && left.high >= 0;
  if (whole) {
    const and = tiresChanged(about) ? ', but need not: the tires were changed too' : '';
    return `${begin}the brakes can explain all${and}; they were expected to make it ${signedRange(expected, 'stopping-distance', say)}.`;
  }
  const rest = say.range(Math.abs(left.low), Math.abs(left.high), 'stopping-distance');
  if (left.value > 0 === measured.value > 0)
    return `${begin}the brakes can explain ${partOf(share)}; ${restOf(change, say)} are ${culprits(about)}.`;
  return `${begin}the brakes alone were expected to make ${rest} more: part of their gain did not arrive, or ${culprits(about)} took it.`;
}

/** How much of it the brakes can explain; a share below none is none. */
function partOf({ low, high }: { readonly low: number; readonly high: number }): string {
  const [least, most] = [low, high].map((share) => Math.round(100 * Math.max(0, share))) as [number, number];
  if (most === 0) return 'next to nothing of it';
  return least === 0 ? `at most ${most} %` : `${least} to ${most} %`;
}

/** What is left, never more than there is. */
function restOf({ unexplained_m: left, measured_m: measured }: Change, say: Speaker): string {
  if (left === null || measured === null) return 'the rest';
  const ends = [Math.abs(left.low), Math.abs(left.high)] as const;
  const most = Math.max(Math.abs(measured.low), Math.abs(measured.high));
  if (Math.max(...ends) <= most) return `the other ${say.range(ends[0], ends[1], 'stopping-distance')}`;
  return `at least ${endOf(left, Math.min(...ends), 'stopping-distance', say)}`;
}

/** What may have made the rest, by what is known to have differed. */
function culprits(about: Explained): string {
  const { confounders } = about;
  const known = [
    ...(tiresChanged(about) ? ['the new tires'] : []),
    ...(confounders.some((text) => /^surface\b/i.test(text)) ? ['the other surface'] : []),
    ...(confounders.some((text) => /^(?:date|different days)\b/i.test(text)) ? ['the other day'] : []),
  ];
  const words = known.length > 0 ? known : ['tires', 'surface', 'driver', 'warm-up'];
  return `${words.join(', ')} or what the model lacks`;
}
