import type { SetUpPrediction } from '../results/prediction.ts';
import type { Change } from '../words/change.ts';
import { plural } from '../words/plural.ts';
import { signedRange } from '../words/signed-range.ts';
import type { Speaker } from '../words/speaker.ts';
import { toldChange } from '../words/told-change.ts';
import { distanceChange } from './distance-words.ts';
import { trifles } from './trifles.ts';
import type { VerdictInput } from './verdict.ts';

type Row = SetUpPrediction['repeatedStops'];

/** What the set-up does for the last of the repeated stops, and how hot the front rotors get. */
export function heatWords({ reference, changed, difference }: VerdictInput, say: Speaker): string {
  const [last, lastBefore] = [changed.repeatedStops.at(-1), reference.repeatedStops.at(-1)];
  if (last === undefined || lastBefore === undefined || last.stop < 2) return '';
  const apart = difference.lastRepeatedStop_m;
  if (apart === null) return 'The last of the repeated stops can not be compared: one car no longer stops.';
  const change = toldChange(apart, 'stopping-distance', trifles.distance, say);
  const range = signedRange(apart, 'stopping-distance', say);
  const stop = `After ${plural(last.stop, 'stop')} in a row`;
  const heat = `${frontHeat(last, lastBefore, say)}${outside(changed.repeatedStops, reference.repeatedStops)}`;
  if (change.kind === 'none') return `${stop} the last one is no different; ${heat}.`;
  if (change.kind === 'less' || change.kind === 'more') return `${stop} the last one is ${range}; ${heat}.`;
  return `${stop} the last one shows no sure difference (${range}); ${heat}.`;
}

function frontHeat(last: Row[number], lastBefore: Row[number], say: Speaker): string {
  const [now, then] = [last, lastBefore].map(({ frontRotorPeak_C }) =>
    say.rounded(frontRotorPeak_C, 'temperature', 2),
  );
  return `front rotors reach about ${now} ${now === then ? 'as before' : `instead of ${then}`}`;
}

function outside(...rows: readonly Row[]): string {
  const isOutside = rows.some((row) => row.at(-1)?.beyondModel === true);
  return isOutside
    ? ' (hotter than pads or rotors are stated for: outside the model, these figures are a guess)'
    : '';
}

/** What the last of the repeated stops lets one say; null where there is none, or none that the model holds for. */
export function lastStopChange(input: VerdictInput, say: Speaker): Change | null {
  const { changed, reference, difference } = input;
  const last = changed.repeatedStops.at(-1);
  if (last === undefined || last.stop < 2 || difference.lastRepeatedStop_m === null) return null;
  if (last.beyondModel || reference.repeatedStops.at(-1)?.beyondModel === true) return null;
  return toldChange(difference.lastRepeatedStop_m, 'stopping-distance', trifles.distance, say);
}

/** `the last of 8 stops in a row 10 to 40 ft shorter`; with or without a verb between. */
export function lastStopWords({ changed, difference }: VerdictInput, say: Speaker, verb = ''): string {
  const last = changed.repeatedStops.at(-1);
  const apart = difference.lastRepeatedStop_m;
  if (last === undefined || apart === null) return '';
  return `the last of ${plural(last.stop, 'stop')} in a row${verb} ${signedRange(apart, 'stopping-distance', say)}`;
}

/** The same for the top sentence, where it says more than the first stop does; else nothing. */
export function heatClause(input: VerdictInput, say: Speaker): string {
  const { difference } = input;
  const change = lastStopChange(input, say);
  if (input.wet || difference.lastRepeatedStop_m === null) return '';
  if (change === null || (change.kind !== 'less' && change.kind !== 'more')) return '';
  const beyondFirst =
    Math.abs(difference.lastRepeatedStop_m.value) > Math.abs(difference.distance_m.value) + 1;
  if (!beyondFirst) return '';
  const agrees = distanceChange(input, say).kind === change.kind;
  return `${agrees ? ', and' : ', but'} ${lastStopWords(input, say, ' is')}`;
}
