import { speedOffNominal } from '@standstill/logs';
import type { SetFigures, StopSetComparison } from '@standstill/logs';
import type { UnitSystem } from '@standstill/units';
import type { LogReport } from '../results/log-report.ts';
import { plural } from '../words/plural.ts';
import { signedRange } from '../words/signed-range.ts';
import { speaker } from '../words/speaker.ts';
import type { Speaker } from '../words/speaker.ts';
import { shown } from './comparison-sentence.ts';

interface ComparisonWarningsInput {
  readonly compared: StopSetComparison;
  readonly reports: readonly LogReport[];
  /** True where nobody stated the nominal speed. */
  readonly guessed: boolean;
  readonly units: UnitSystem;
}

/** Stops in a set under which its spread is hardly known (common practice). */
const fewStops = 4;

/** What a reader must know before believing the difference. */
export function comparisonWarnings(input: ComparisonWarningsInput): string[] {
  const { compared, units } = input;
  const say = speaker(units);
  return [
    ...guessedSpeed(input, say),
    ...[compared.before, compared.after].flatMap((set) => [
      ...fewWords(set),
      ...trendWords(set, say),
      ...warmUpWords(set, say),
    ]),
    ...[compared.before, compared.after].flatMap(leftOutWords),
    ...smallSetWords(compared),
    ...bestWords(compared, say),
    ...bootstrapWords(compared),
  ];
}

function guessedSpeed({ guessed, compared, reports }: ComparisonWarningsInput, say: Speaker): string[] {
  if (!guessed) return [];
  const { nominalSpeed } = compared;
  const counted = reports.flatMap(({ stops }) => stops.filter((stop) => stop.counted));
  const off = counted.filter((stop) => speedOffNominal(stop.entrySpeed_m_s, nominalSpeed) !== 'within');
  const speed = say.plain(nominalSpeed, 'speed');
  const far =
    off.length === 0
      ? ''
      : ` ${plural(off.length, 'stop')} of ${counted.length} began so far from it that the correction is doubtful.`;
  return [
    `No nominal speed was given: distances are corrected to ${speed}, the round speed near the stops'.${far}`,
  ];
}

function fewWords({ name, distances }: SetFigures): string[] {
  if (distances.length >= fewStops) return [];
  return [
    `"${name}" has only ${plural(distances.length, 'stop')}: its spread is hardly known, so the interval is wide.`,
  ];
}

function trendWords({ name, trend }: SetFigures, say: Speaker): string[] {
  if (trend === null || (trend.low <= 0 && trend.high >= 0)) return [];
  const size = say.range(Math.abs(trend.low), Math.abs(trend.high), 'stopping-distance');
  const way = trend.value > 0 ? 'longer (fade?)' : 'shorter (warming tires or brakes, or practice?)';
  return [
    `In "${name}" each stop is ${size} ${way} than the one before: run order and change can't be told apart until both sets are driven alike.`,
  ];
}

function warmUpWords({ name, warmUp }: SetFigures, say: Speaker): string[] {
  if (warmUp === null || (warmUp.low <= 0 && warmUp.high >= 0)) return [];
  const size = signedRange(warmUp, 'stopping-distance', say);
  return [
    `The first run of "${name}" is ${size} than the line through the others: drive a run or two before the ones that count.`,
  ];
}

/** Where drawing the sets anew claims more than Welch's interval, it is the small sets that make it so. */
function bootstrapWords({ bootstrap, difference }: StopSetComparison): string[] {
  const claims = ({ low, high }: typeof difference): boolean => low > 0 || high < 0;
  if (!bootstrap.tooNarrow || claims(difference) || !claims(bootstrap.difference)) return [];
  return [
    'Drawing the sets anew from themselves would call the difference sure; with under ten stops in a set that interval is too narrow, so the other one holds.',
  ];
}

function leftOutWords({ name, leftOut }: SetFigures): string[] {
  const [first] = leftOut;
  if (first === undefined) return [];
  const what = `${plural(leftOut.length, 'stop')} of "${name}" left out`;
  return [`${what}; the first: stop ${first.number}, ${first.reason}`];
}

function smallSetWords(compared: StopSetComparison): string[] {
  const { permutation, difference } = compared;
  const beyondZero = difference.low > 0 || difference.high < 0;
  if (!beyondZero) return [];
  const p = `${(100 * permutation.p).toPrecision(2)} %`;
  if (!shown(compared)) {
    return [
      `The interval leaves zero out, but shuffling the stops makes as large a difference in ${p} of the orders: not called a difference.`,
    ];
  }
  if (permutation.p <= 0.05) return [];
  return [
    `With so few stops no order is rarer than ${p}: the difference rests on the assumption that stops scatter normally.`,
  ];
}

/** Best against best is what people quote; it is said where it claims more than the means can carry. */
function bestWords({ bestOfEach, difference }: StopSetComparison, say: Speaker): string[] {
  const claimed = bestOfEach.difference;
  if (claimed >= difference.low && claimed <= difference.high) return [];
  const half = (difference.high - difference.low) / 2;
  const value = Math.abs(claimed);
  const size = say.central({ value, low: value - half, high: value + half }, 'stopping-distance');
  const way = claimed < 0 ? 'shorter' : 'longer';
  return [
    `Best against best would say ${size} ${way}, which the means do not carry: the best of a set is partly luck, and the more so the more it scatters.`,
  ];
}
