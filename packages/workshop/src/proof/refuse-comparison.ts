import type { SetTooSmall } from '@standstill/logs';
import type { UnitSystem } from '@standstill/units';
import type { ComparisonRefusal } from '../results/log-report.ts';
import { plural } from '../words/plural.ts';
import { speaker } from '../words/speaker.ts';
import type { CompareRunsInput } from './compare-runs.ts';
import type { RepeatedLog } from './repeated-log.ts';

/** Why two sets of runs can't be compared. */
export const comparisonRefusalCodes = [
  'nominal-speeds-differ',
  'no-stop-counts',
  'no-gate-distance',
  'set-too-small',
  'same-log',
] as const;

type Code = (typeof comparisonRefusalCodes)[number];

/** What was found, where the code alone does not tell. */
interface Found {
  readonly tooSmall?: SetTooSmall;
  readonly repeated?: RepeatedLog;
}

/** One sentence: what is missing, and what to do about it. */
export function refuseComparison(
  code: Code,
  input: CompareRunsInput,
  units: UnitSystem,
  found: Found = {},
): ComparisonRefusal {
  return { kind: 'comparison-refusal', version: 1, code, sentence: sentence(code, input, units, found) };
}

function sentence(
  code: Code,
  input: CompareRunsInput,
  units: UnitSystem,
  { tooSmall, repeated }: Found,
): string {
  switch (code) {
    case 'nominal-speeds-differ':
      return `The runs were meant from different speeds (${speeds(input, units)}); compare runs from one speed, or say which speed to correct all of them to.`;
    case 'no-stop-counts':
      return 'Neither set has a stop that counts; look at the reasons beside the stops, then drive at least three stops for each set.';
    case 'no-gate-distance':
      return 'The distance from the speed gate needs one nominal speed in every report; read the logs again with that speed.';
    case 'set-too-small':
      return tooSmallSentence(input, tooSmall);
    case 'same-log':
      return sameLogSentence(repeated);
  }
}

function speeds({ before, after }: CompareRunsInput, units: UnitSystem): string {
  const say = speaker(units);
  const known = [...before.reports, ...after.reports].flatMap(({ nominalSpeed_m_s: speed }) =>
    speed === null ? [] : [speed],
  );
  return [...new Set(known.map((speed) => say.plain(speed, 'speed')))].join(', ');
}

function sameLogSentence(repeated: RepeatedLog | undefined): string {
  const [first, second] = repeated?.names ?? ['a log', 'a log'];
  const which =
    first === second ? `${first} is given twice` : `${first} and ${second} hold the very same stops`;
  return repeated?.sides === 'both'
    ? `${which}, in two sets: a set held against itself shows nothing; give the log of the other set-up.`
    : `${which}, both ${repeated?.sides ?? 'on one side'}: stops counted twice feign certainty; give each log once.`;
}

function tooSmallSentence(input: CompareRunsInput, tooSmall: SetTooSmall | undefined): string {
  const set = tooSmall === undefined ? input.before : input[tooSmall.set];
  const counted = tooSmall?.counted ?? 0;
  const [first] = tooSmall?.leftOut ?? [];
  const why =
    first === undefined ? '' : ` (left out: stop ${first.number}, ${first.reason.replace(/\.$/, '')})`;
  return `"${set.name}" has ${plural(counted, 'stop')} that count${counted === 1 ? 's' : ''}${why}; a comparison needs at least two in each set, and three or more to say anything.`;
}
