import type { TooFewToFade } from '@standstill/logs';
import type { FadeRefusal } from '../../results/fade-report.ts';
import { plural } from '../../words/plural.ts';
import type { RepeatedLog } from '../repeated-log.ts';
import type { ReportFadeInput } from './report-fade.ts';

/** Why stops show no fade. */
const fadeRefusalCodes = [
  'nominal-speeds-differ',
  'no-stop-counts',
  'no-gate-distance',
  'too-few-to-fade',
  'same-log',
] as const;

interface Found {
  readonly tooFew?: TooFewToFade;
  /** Of the set that is too small. */
  readonly name?: string;
  readonly repeated?: RepeatedLog;
}

/** One sentence: what is missing, and what to do about it. */
export function refuseFade(
  code: (typeof fadeRefusalCodes)[number],
  { set }: ReportFadeInput,
  found: Found,
): FadeRefusal {
  return { kind: 'fade-refusal', version: 1, code, sentence: sentenceOf(code, set.name, found) };
}

function sentenceOf(code: (typeof fadeRefusalCodes)[number], name: string, found: Found): string {
  switch (code) {
    case 'nominal-speeds-differ':
      return 'The logs were meant from different speeds; say which speed to correct all of them to.';
    case 'no-stop-counts':
      return `"${name}" has no stop that counts; look at the reasons beside the stops.`;
    case 'no-gate-distance':
      return 'The distance from the speed gate needs one nominal speed in every report; read the logs again with that speed.';
    case 'too-few-to-fade':
      return tooFewSentence(found.tooFew, found.name ?? name);
    case 'same-log':
      return `${found.repeated?.names.join(' and ') ?? 'Two logs'} hold the very same stops; give each log once.`;
  }
}

function tooFewSentence(tooFew: TooFewToFade | undefined, name: string): string {
  const counted = tooFew?.counted ?? 0;
  const first = tooFew?.leftOut[0];
  const why =
    first === undefined ? '' : ` (left out: stop ${first.number}, ${first.reason.replace(/\.$/, '')})`;
  return `"${name}" has ${plural(counted, 'stop')} that count${counted === 1 ? 's' : ''}${why}; a fade takes at least three, and eight or more to say much.`;
}
