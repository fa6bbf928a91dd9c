import type { UnitSystem } from '@standstill/units';
import type { SetUpDifference, SetUpPrediction } from '../results/prediction.ts';
import { changeOf } from '../words/change.ts';
import { listOf } from '../words/list-of.ts';
import { nameInSentence } from '../words/name-in-sentence.ts';
import { plural } from '../words/plural.ts';
import { speaker } from '../words/speaker.ts';
import type { Speaker } from '../words/speaker.ts';

export interface VerdictInput {
  readonly reference: SetUpPrediction;
  readonly changed: SetUpPrediction;
  readonly difference: Omit<SetUpDifference, 'verdict'>;
  /** m/s. */
  readonly speed: number;
  /** N. */
  readonly pedalForce: number;
  readonly units: UnitSystem;
}

/** Sizes under which nobody in the car would notice (assumed): m, N, m of pedal travel. */
export const trifles = { distance: 0.3, force: 10, travel: 0.003, partDistance: 0.1 } as const;

/** What a set-up buys, what it does not, and what it makes worse: the trade's plain words, no more than the interval. */
export function verdict(input: VerdictInput): string {
  const say = speaker(input.units);
  const sentences = [
    `${nameInSentence(input.changed.title)} ${distanceWords(input, say)}.`,
    limitWords(input, say),
    effortWords(input, say),
    travelWords(input, say),
    heatWords(input, say),
    idlePartWords(input),
  ];
  return sentences.filter((sentence) => sentence !== '').join(' ');
}

/** What happens to the distance: `saves 3 to 9 ft from 60 mph`. */
export function distanceWords({ difference, speed }: VerdictInput, say: Speaker): string {
  const from = `from ${say.plain(speed, 'speed')}`;
  const change = changeOf(difference.distance_m, trifles.distance);
  const feet = (low: number, high: number): string => say.range(low, high, 'stopping-distance');
  switch (change.kind) {
    case 'less':
      return `saves ${feet(change.least, change.most)} ${from}`;
    case 'more':
      return `lengthens the stop ${from} by ${feet(change.least, change.most)}`;
    case 'none':
      return `does not change the stop ${from}: less than ${say.plain(trifles.distance, 'stopping-distance')} either way`;
    case 'open':
      return `may do anything ${from} between ${feet(change.less, change.less)} shorter and ${feet(change.more, change.more)} longer: no gain to promise`;
  }
}

function limitWords({ reference, changed, pedalForce }: VerdictInput, say: Speaker): string {
  const at = `at ${say.plain(pedalForce, 'force')}`;
  const before = reference.limitedBy !== 'brake torque';
  const after = changed.limitedBy !== 'brake torque';
  if (before && after)
    return `Before and after the tires are the limit ${at}: more brake can't shorten this stop, only grip can.`;
  if (after) return `Before, the brakes are the limit ${at}; with it the tires are.`;
  if (before) return `With it the brakes no longer reach the tires' limit ${at}: that takes a harder push.`;
  return `Before and after the brakes are the limit ${at}: the tires have grip left for a harder push.`;
}

function effortWords({ difference }: VerdictInput, say: Speaker): string {
  if (difference.pedalForceAtLimit_N === null) return '';
  const change = changeOf(difference.pedalForceAtLimit_N, trifles.force);
  if (change.kind === 'less' || change.kind === 'more') {
    return `The tires' limit takes ${say.range(change.least, change.most, 'force')} ${change.kind} on the pedal.`;
  }
  return '';
}

function travelWords({ difference }: VerdictInput, say: Speaker): string {
  const change = changeOf(difference.pedalTravel_m, trifles.travel);
  if (change.kind === 'none') return 'The pedal travel stays what it is.';
  if (change.kind === 'open') return 'Whether the pedal gets longer or shorter can not be told.';
  const way = change.kind === 'more' ? 'longer' : 'shorter';
  return `The pedal gets ${say.range(change.least, change.most, 'travel')} ${way}.`;
}

function heatWords({ reference, changed, difference }: VerdictInput, say: Speaker): string {
  const [last, lastBefore] = [changed.repeatedStops.at(-1), reference.repeatedStops.at(-1)];
  if (last === undefined || lastBefore === undefined || last.stop < 2) return '';
  const change = changeOf(difference.lastRepeatedStop_m, trifles.distance);
  const feet = (low: number, high: number): string => say.range(low, high, 'stopping-distance');
  const stop = `After ${plural(last.stop, 'stop')} in a row`;
  const heat = `front rotors reach about ${say.plain(last.frontRotorPeak_C, 'temperature')} instead of ${say.plain(lastBefore.frontRotorPeak_C, 'temperature')}`;
  switch (change.kind) {
    case 'less':
      return `${stop} the last one is ${feet(change.least, change.most)} shorter; ${heat}.`;
    case 'more':
      return `${stop} the last one is ${feet(change.least, change.most)} longer; ${heat}.`;
    case 'none':
      return `${stop} the last one is no different; ${heat}.`;
    case 'open':
      return `${stop} no difference of the last one can be promised; ${heat}.`;
  }
}

/** Parts that change nothing are named: money that stays in the customer's pocket. */
function idlePartWords({ difference }: VerdictInput): string {
  const idle = difference.byPart.filter(({ distance_m }) => Math.abs(distance_m) < trifles.partDistance);
  if (idle.length === 0 || difference.byPart.length < 2) return '';
  if (idle.length === difference.byPart.length) return 'None of its parts changes this distance.';
  const titles = listOf(idle.map(({ title }) => title));
  return `Of its parts, ${titles} change nothing in the distance.`;
}
