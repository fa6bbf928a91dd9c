import type { UnitSystem } from '@standstill/units';
import type { Prediction, SetUpDifference, SetUpPrediction } from '@standstill/workshop';
import type { Terminal } from '../surface/terminal.ts';
import { assumedLines, assumedSummary } from './assumed-lines.ts';
import { quantityPrinter, realMinus, type QuantityPrinter } from './quantity-printer.ts';
import { textTable } from './text-table.ts';
import { warningLines } from './warning-lines.ts';

/** A prediction for a person: the answer, dangers, the table, what each part buys, the other warnings, what was assumed. */
export function predictionText(
  prediction: Prediction,
  { units, path, assumed }: { readonly units: UnitSystem; readonly path: string; readonly assumed: boolean },
  terminal: Terminal,
): string {
  const print = quantityPrinter(units);
  const { colors } = terminal;
  const { warnings } = prediction;
  return [
    [colors.bold(prediction.sentence)],
    warningLines(warnings, ['danger'], colors),
    [conditions(prediction, print)],
    [setUpTable(prediction.setUps, print, terminal)],
    ...prediction.differences.map((difference) => differenceLines(difference, prediction, print, terminal)),
    prediction.budgets.map(({ sentence }) => sentence),
    warningLines(warnings, ['caution', 'note'], colors),
    assumed ? assumedLines(prediction.assumed, colors) : assumedSummary(prediction.assumed, path),
  ]
    .filter((block) => block.length > 0)
    .map((block) => block.join('\n'))
    .join('\n\n');
}

function conditions(
  { job, speed_m_s, pedalForce_N, surface, draws, seed }: Prediction,
  print: QuantityPrinter,
): string {
  const speed = print.quantity(speed_m_s, 'speed');
  const force = print.quantity(pedalForce_N, 'force');
  return `${job}: one stop from ${speed}, foot at ${force}, ${surface} road. Intervals are 95 %, from ${draws} draws (seed ${seed}).`;
}

type Row = readonly [label: string, cell: (setUp: SetUpPrediction, print: QuantityPrinter) => string];

const rows: readonly Row[] = [
  ['Stopping distance', ({ distance_m }, print) => print.estimate(distance_m, 'stopping-distance')],
  ['Time', ({ time_s }, print) => print.estimate(time_s, 'time')],
  [
    'Mean deceleration',
    ({ meanDeceleration_m_s2 }, print) => print.estimate(meanDeceleration_m_s2, 'deceleration'),
  ],
  ['Limited by', ({ limitedBy }) => limitedBy],
  [
    'Pedal force at the tires’ limit',
    ({ pedalForceAtLimit_N }, print) => print.estimate(pedalForceAtLimit_N, 'force'),
  ],
  ['Pedal travel', ({ pedalTravel_m }, print) => print.estimate(pedalTravel_m, 'travel')],
  ['Share of the travel used', ({ pedalTravelShare }, print) => print.estimate(pedalTravelShare, 'share')],
  [
    'Front line pressure',
    ({ frontLinePressure_Pa }, print) => print.estimate(frontLinePressure_Pa, 'line-pressure'),
  ],
  [
    'Rear line pressure',
    ({ rearLinePressure_Pa }, print) => print.estimate(rearLinePressure_Pa, 'line-pressure'),
  ],
  ['Booster', ({ boosterRunOut }) => (boosterRunOut ? 'past its run-out' : 'within its range')],
  ['Front rotor, hottest', ({ frontRotorPeak_C }, print) => print.estimate(frontRotorPeak_C, 'temperature')],
  ['Rear rotor, hottest', ({ rearRotorPeak_C }, print) => print.estimate(rearRotorPeak_C, 'temperature')],
  ['Last of the repeated stops', lastStop],
  ['Axle that locks first', ({ balance }) => balance.firstToLock],
  ['… at', ({ balance }, print) => print.estimate(balance.lockDeceleration_g, 'ratio') + ' g'],
  ['Draws with the rear first', ({ balance }, print) => print.quantity(balance.rearFirstShare, 'share')],
  ['Brake force at the front', ({ balance }, print) => print.quantity(balance.frontForceShare, 'share')],
];

function lastStop({ repeatedStops }: SetUpPrediction, print: QuantityPrinter): string {
  const last = repeatedStops.at(-1);
  if (last === undefined) return '–';
  const distance = print.quantity(last.distance_m, 'stopping-distance');
  return `stop ${last.stop}: ${distance}, front rotor ${print.quantity(last.frontRotorPeak_C, 'temperature')}`;
}

function setUpTable(setUps: readonly SetUpPrediction[], print: QuantityPrinter, terminal: Terminal): string {
  const head = ['', ...setUps.map(({ id, title }) => (title === '' ? id : title))];
  const cells = rows.map(([label, cell]) => [
    label,
    ...setUps.map((setUp) => cell(setUp, print).replace('– g', '–')),
  ]);
  return textTable(head, cells, terminal);
}

function differenceLines(
  { id, against, distance_m, byPart, verdict }: SetUpDifference,
  { setUps }: Prediction,
  print: QuantityPrinter,
  terminal: Terminal,
): string[] {
  const title = (wanted: string): string => setUps.find((setUp) => setUp.id === wanted)?.title ?? wanted;
  const whole = `${title(id)} against ${title(against)}: ${print.difference(distance_m, 'stopping-distance')}`;
  const halfWidth = (distance_m.high - distance_m.low) / 2;
  const parts = byPart.map((part) => [
    `  ${part.title}`,
    signed(print.quantity(part.distance_m, 'stopping-distance', halfWidth), part.distance_m),
  ]);
  const table =
    parts.length === 0
      ? []
      : [textTable(['  Part', 'buys (minus is shorter)'], parts, { ...terminal, width: Infinity })];
  return [terminal.colors.bold(whole), verdict, ...table];
}

function signed(text: string, value: number): string {
  return value > 0 && !/^0(?:\.0*)? /u.test(text) ? `+${text}` : realMinus(text);
}
