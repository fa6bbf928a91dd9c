import type { UnitSystem } from '@standstill/units';
import type {
  Estimate,
  LimitsDifference,
  LimitsReport,
  MeasureNext,
  SetUpLimits,
} from '@standstill/workshop';
import type { Terminal } from '../surface/terminal.ts';
import { assumedLines, assumedSummary } from './assumed-lines.ts';
import { intervalWords } from './interval-words.ts';
import { quantityPrinter, type QuantityPrinter } from './quantity-printer.ts';
import { textTable } from './text-table.ts';
import { warningLines } from './warning-lines.ts';

/** What holds the set-ups back, for a person: the answer, dangers, each set-up's budget, what each part buys, what to measure next. */
export function limitsText(
  report: LimitsReport,
  { units, assumed }: { readonly units: UnitSystem; readonly assumed: boolean },
  terminal: Terminal,
): string {
  const print = quantityPrinter(units);
  const { colors } = terminal;
  const { warnings } = report;
  return [
    [colors.bold(report.sentence)],
    warningLines(warnings, ['danger'], colors),
    [conditions(report, print)],
    ...report.setUps.map((setUp, index) => setUpLines(setUp, index === 0, print, terminal)),
    ...report.differences.map((difference) => differenceLines(difference, print, terminal)),
    warningLines(warnings, ['caution', 'note'], colors),
    assumed ? assumedLines(report.assumed, colors) : assumedSummary(report.assumed),
  ]
    .filter((block) => block.length > 0)
    .map((block) => block.join('\n'))
    .join('\n\n');
}

const samplings = { 'latin-hypercube': 'Latin hypercube', sobol: 'Sobol sequence' } as const;

function conditions(
  { job, speed_m_s, pedalForce_N, surface, draws, seed, sampling }: LimitsReport,
  print: QuantityPrinter,
): string {
  const speed = print.quantity(speed_m_s, 'speed');
  const force = print.quantity(pedalForce_N, 'force');
  return `${job}: one stop from ${speed}, foot at ${force}, ${surface} road. ${intervalWords(draws, seed, `, ${samplings[sampling]}`)}`;
}

/** The first set-up's sentence is the answer at the top already. */
function setUpLines(
  setUp: SetUpLimits,
  isFirst: boolean,
  print: QuantityPrinter,
  terminal: Terminal,
): string[] {
  const { sentence, details, budget, sensitivity, measureNext } = setUp;
  const { ideal_m, total_m, shares } = budget;
  const rows: [string, Estimate][] = [
    ['  Least that these tires allow', ideal_m],
    ...shares.map((share): [string, Estimate] => [`  ${share.title}`, share.distance_m]),
    ['  together', total_m],
  ];
  const cells = rows.map(([label, distance]) => [label, print.estimate(distance, 'stopping-distance')]);
  const head = [`  Where the feet go (from ${budget.draws} draws)`, 'distance'];
  return [
    ...(isFirst ? [] : [terminal.colors.bold(sentence)]),
    ...(details === '' ? [] : [details]),
    budget.sentence,
    textTable(head, cells, { ...terminal, width: Infinity }),
    ...rangeLines(sensitivity),
    ...measureLines(measureNext),
  ];
}

function differenceLines(difference: LimitsDifference, print: QuantityPrinter, terminal: Terminal): string[] {
  const { sentence, byPart, byPartDraws, pairing, measureNext } = difference;
  const cells = byPart.map(({ title, distance_m }) => [
    `  ${title}`,
    print.difference(distance_m, 'stopping-distance'),
  ]);
  const whole = ['  together', print.difference(difference.distance_m, 'stopping-distance')];
  const head = [`  Part (from ${byPartDraws} draws)`, 'buys (minus is shorter)'];
  const table = textTable(head, [...cells, whole], { ...terminal, width: Infinity });
  return [
    terminal.colors.bold(sentence),
    ...(cells.length === 0 ? [] : [table]),
    ...(pairing === null ? [] : [pairing.sentence]),
    ...rangeLines(difference.sensitivity),
    ...measureLines(measureNext),
  ];
}

/** Share of the variance from which a number is named. */
const worthNaming = 0.05;

/** Which numbers the width of the interval comes from. */
function rangeLines({ numbers }: LimitsReport['setUps'][number]['sensitivity']): string[] {
  const told = numbers.filter(({ total }) => total.value >= worthNaming);
  if (told.length === 0) return [];
  const words = told.map(({ title, of, total }) => `${title} (${of}) ${percent(total.value)}`);
  return [`The width of the range comes from: ${words.join(', ')}.`];
}

function measureLines(all: readonly MeasureNext[]): string[] {
  if (all.length === 0)
    return ['Nothing is worth measuring for this: no single measurement takes a tenth off the range.'];
  return ['What to measure next, the best first:', ...all.map(({ sentence }) => `  ${sentence}`)];
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}
