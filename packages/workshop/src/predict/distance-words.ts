import { toldChange } from '../words/told-change.ts';
import type { Change } from '../words/change.ts';
import { endOf, signedRange } from '../words/signed-range.ts';
import type { Speaker } from '../words/speaker.ts';
import { subjectOf } from '../words/subject-of.ts';
import { trifles } from './trifles.ts';
import type { VerdictInput } from './verdict.ts';

/** °C up to which brakes at the start of a stop count as cold (common practice: a cold test starts below 100 °C). */
const cold = 150;

/** What the difference of one stop lets one say; on water no saving is sure. */
export function distanceChange({ difference }: VerdictInput, say: Speaker): Change {
  return toldChange(difference.distance_m, 'stopping-distance', trifles.distance, say);
}

/** `one cold stop`, or what it is instead. */
export function oneStop({ startTemperature }: VerdictInput, say: Speaker): string {
  if (startTemperature <= cold) return 'one cold stop';
  return `one stop with the rotors at ${say.rounded(startTemperature, 'temperature', 2)}`;
}

/** What happens to the distance of one stop, after the subject: `saves 3 to 9 ft from 60 mph`. */
export function distanceWords(input: VerdictInput, say: Speaker, where = ''): string {
  const { changed, difference, speed, sameTires, wet } = input;
  const from = `from ${say.plain(speed, 'speed')}${where}`;
  const { verb } = subjectOf(changed.title, sameTires);
  const change = distanceChange(input, say);
  const feet = (least: number, most: number): string => say.range(least, most, 'stopping-distance');
  const end = (size: number): string => endOf(difference.distance_m, size, 'stopping-distance', say);
  switch (change.kind) {
    case 'less':
      if (wet) return `may save up to ${end(change.most)} ${from}, which is not sure on water`;
      return `${verb('save', 'saves')} ${feet(change.least, change.most)} ${from}`;
    case 'more':
      return `${verb('cost', 'costs')} ${feet(change.least, change.most)} ${from}: the stop gets longer`;
    case 'perhaps-less':
      return `${verb('save', 'saves')} at most ${end(change.most)} ${from}, perhaps nothing`;
    case 'perhaps-more':
      return `${verb('save', 'saves')} nothing ${from} and may cost up to ${end(change.most)}`;
    case 'none':
      return `${verb('change', 'changes')} nothing in the distance of ${oneStop(input, say)} ${from} (less than ${say.rough(trifles.distance, 'stopping-distance')} either way)`;
    case 'open':
      return `${verb('make', 'makes')} no sure difference ${from} (${signedRange(difference.distance_m, 'stopping-distance', say)})`;
  }
}
