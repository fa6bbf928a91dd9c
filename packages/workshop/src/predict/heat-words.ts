import { changeOf } from '../words/change.ts';
import { plural } from '../words/plural.ts';
import { signedRange } from '../words/signed-range.ts';
import type { Speaker } from '../words/speaker.ts';
import { trifles } from './trifles.ts';
import type { VerdictInput } from './verdict.ts';

/** What the set-up does for the last of the repeated stops, and how hot the front rotors get. */
export function heatWords({ reference, changed, difference }: VerdictInput, say: Speaker): string {
  const [last, lastBefore] = [changed.repeatedStops.at(-1), reference.repeatedStops.at(-1)];
  if (last === undefined || lastBefore === undefined || last.stop < 2) return '';
  const change = changeOf(difference.lastRepeatedStop_m, trifles.distance);
  const range = signedRange(difference.lastRepeatedStop_m, 'stopping-distance', say);
  const stop = `After ${plural(last.stop, 'stop')} in a row`;
  const [now, then] = [last, lastBefore].map(({ frontRotorPeak_C }) =>
    say.plain(frontRotorPeak_C, 'temperature'),
  );
  const heat =
    now === then
      ? `front rotors reach about ${now} as before`
      : `front rotors reach about ${now} instead of ${then}`;
  if (change.kind === 'none') return `${stop} the last one is no different; ${heat}.`;
  if (change.kind === 'less' || change.kind === 'more') return `${stop} the last one is ${range}; ${heat}.`;
  return `${stop} the last one shows no sure difference (${range}); ${heat}.`;
}

/** The same in half a clause for the top sentence, where it says more than the first stop does; else nothing. */
export function heatClause({ changed, difference }: VerdictInput, say: Speaker): string {
  const last = changed.repeatedStops.at(-1);
  const change = changeOf(difference.lastRepeatedStop_m, trifles.distance);
  if (last === undefined || last.stop < 2 || (change.kind !== 'less' && change.kind !== 'more')) return '';
  const beyondFirst =
    Math.abs(difference.lastRepeatedStop_m.value) > Math.abs(difference.distance_m.value) + 1;
  if (!beyondFirst) return '';
  const range = signedRange(difference.lastRepeatedStop_m, 'stopping-distance', say);
  return `, but the last of ${plural(last.stop, 'stop')} in a row is ${range}`;
}
