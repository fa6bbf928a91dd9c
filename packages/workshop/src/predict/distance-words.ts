import { changeOf } from '../words/change.ts';
import { endOf, signedRange } from '../words/signed-range.ts';
import type { Speaker } from '../words/speaker.ts';
import { subjectOf } from '../words/subject-of.ts';
import { trifles } from './trifles.ts';
import type { VerdictInput } from './verdict.ts';

/** What happens to the distance of one stop, after the subject: `saves 3 to 9 ft from 60 mph`. */
export function distanceWords(input: VerdictInput, say: Speaker, where = ''): string {
  const { changed, difference, speed, sameTires } = input;
  const from = `from ${say.plain(speed, 'speed')}${where}`;
  const { verb } = subjectOf(changed.title, sameTires);
  const change = changeOf(difference.distance_m, trifles.distance);
  const feet = (least: number, most: number): string => say.range(least, most, 'stopping-distance');
  const end = (size: number): string => endOf(difference.distance_m, size, 'stopping-distance', say);
  switch (change.kind) {
    case 'less':
      return `${verb('save', 'saves')} ${feet(change.least, change.most)} ${from}`;
    case 'more':
      return `${verb('cost', 'costs')} ${feet(change.least, change.most)} ${from}: the stop gets longer`;
    case 'perhaps-less':
      return `${verb('save', 'saves')} at most ${end(change.most)} ${from}, perhaps nothing`;
    case 'perhaps-more':
      return `${verb('save', 'saves')} nothing ${from} and may cost up to ${end(change.most)}`;
    case 'none':
      return `${verb('change', 'changes')} nothing ${from} (less than ${say.rough(trifles.distance, 'stopping-distance')} either way)`;
    case 'open':
      return `${verb('make', 'makes')} no sure difference ${from} (${signedRange(difference.distance_m, 'stopping-distance', say)})`;
  }
}
