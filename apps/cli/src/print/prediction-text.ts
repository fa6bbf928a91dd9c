import { fromUnit, type UnitSystem } from '@standstill/units';
import type { Estimate, Prediction, SetUpDifference, SetUpPrediction } from '@standstill/workshop';
import type { Terminal } from '../surface/terminal.ts';
import { assumedLines, assumedSummary } from './assumed-lines.ts';
import { intervalWords } from './interval-words.ts';
import { quantityPrinter, realMinus, type QuantityPrinter } from './quantity-printer.ts';
import { textTable } from './text-table.ts';
import { warningLines } from './warning-lines.ts';

/** A prediction for a person: the answer, dangers, the table, what each part buys, the other warnings, what was assumed. */
export function predictionText(
  prediction: Prediction,
  { units, assumed }: { readonly units: UnitSystem; readonly assumed: boolean },
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
    assumed ? assumedLines(prediction.assumed, colors) : assumedSummary(prediction.assumed),
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
  return `${job}: one stop from ${speed}, foot at ${force}, ${surface} road. ${intervalWords(draws, seed)}`;
}

/** Prints whole percent. */
const wholePercent = 0.02;
/** N; prints whole pounds. */
const aPound = 22;
/** m; prints whole feet or tenths of a meter. */
const twoFeet = 0.6096;

type Row = readonly [label: string, cell: (setUp: SetUpPrediction, print: QuantityPrinter) => string];

const rows: readonly Row[] = [
  [
    'Stopping distance',
    ({ distance_m, pedalBottoms }, print) =>
      `${print.estimate(distance_m, 'stopping-distance')}${pedalBottoms ? ', pedal on the floor' : ''}`,
  ],
  ['Time', ({ time_s }, print) => print.estimate(time_s, 'time')],
  [
    'Mean deceleration',
    ({ meanDeceleration_m_s2 }, print) => print.estimate(meanDeceleration_m_s2, 'deceleration'),
  ],
  ['Limited by', ({ limitedBy }) => limitedBy],
  [
    "Pedal force at the tires' limit",
    ({ pedalForceAtLimit_N }, print) => print.estimate(pedalForceAtLimit_N, 'force'),
  ],
  ['Pedal travel as asked', ({ pedalTravel_m }, print) => print.estimate(pedalTravel_m, 'travel')],
  ['Share of the travel used', ({ pedalTravelShare }, print) => print.estimate(pedalTravelShare, 'share')],
  [
    "… at the tires' limit",
    ({ atTiresLimit }, print) => print.estimate(atTiresLimit?.pedalTravelShare ?? null, 'share'),
  ],
  [
    'Pedal has travel up to',
    ({ pedalForceThere_N, pedalBottoms }, print) =>
      `${print.quantity(pedalForceThere_N, 'force', aPound)}${pedalBottoms ? ': then the floor' : ''}`,
  ],
  [
    'Front line pressure',
    ({ frontLinePressure_Pa }, print) => print.estimate(frontLinePressure_Pa, 'line-pressure'),
  ],
  [
    'Rear line pressure',
    ({ rearLinePressure_Pa }, print) => print.estimate(rearLinePressure_Pa, 'line-pressure'),
  ],
  [
    'Front pressure at that limit',
    ({ atTiresLimit }, print) => print.estimate(atTiresLimit?.frontLinePressure_Pa ?? null, 'line-pressure'),
  ],
  ['Booster', boosterWords],
  ['Front rotor, hottest', ({ frontRotorPeak_C }, print) => print.estimate(frontRotorPeak_C, 'temperature')],
  ['Rear rotor, hottest', ({ rearRotorPeak_C }, print) => print.estimate(rearRotorPeak_C, 'temperature')],
  ['Last of the repeated stops', lastStop],
  ['Fluid in them, hottest', fluidCell],
  ['Axle that locks first', ({ balance }) => balance.firstToLock],
  [
    '… at',
    ({ balance }, print) => print.estimate(lockDeceleration(balance.lockDeceleration_g), 'deceleration'),
  ],
  [
    'Draws with the rear first',
    ({ balance }, print) => print.quantity(balance.rearFirstShare, 'share', wholePercent),
  ],
  [
    '… with the pads hot',
    ({ balance }, print) => print.quantity(balance.rearFirstShareHot, 'share', wholePercent),
  ],
  [
    'Brake force at the front',
    ({ balance }, print) => print.quantity(balance.frontForceShare, 'share', wholePercent),
  ],
];

function boosterWords({ hasBooster, boosterRunOut }: SetUpPrediction): string {
  if (!hasBooster) return 'none';
  return boosterRunOut ? 'past its run-out' : 'within its range';
}

/** Of the last repeated stop only the middle is known; it is at least as unsure as the first. */
function lastStop(
  { repeatedStops, distance_m, frontRotorPeak_C }: SetUpPrediction,
  print: QuantityPrinter,
): string {
  const last = repeatedStops.at(-1);
  if (last === undefined) return '–';
  const distance = print.quantity(last.distance_m, 'stopping-distance', halfWidth(distance_m));
  const heat = print.quantity(last.frontRotorPeak_C, 'temperature', halfWidth(frontRotorPeak_C));
  return `stop ${last.stop}: ${distance}, front rotor ${heat}${last.beyondModel ? ' (outside the model)' : ''}`;
}

/** Against the boiling point that it has at its age. */
function fluidCell({ fluid }: SetUpPrediction, print: QuantityPrinter): string {
  if (fluid === null) return '–';
  const { highest_C, boiling_C, boilsShare } = fluid;
  const share = boilsShare > 0 ? `; boils in ${print.quantity(boilsShare, 'share', 0.02)} of the draws` : '';
  return `${print.estimate(highest_C, 'temperature')} of ${print.quantity(boiling_C, 'temperature', 5)}${share}`;
}

/** The result is over g; people read decelerations in their own unit. */
function lockDeceleration(overG: Estimate | null): Estimate | null {
  if (overG === null) return null;
  const { value, low, high } = overG;
  const [middle, least, most] = [value, low, high].map((each) => fromUnit(each, 'g', 'acceleration'));
  return { value: middle ?? NaN, low: least ?? NaN, high: most ?? NaN };
}

function halfWidth({ low, high }: Estimate): number {
  return (high - low) / 2;
}

function setUpTable(setUps: readonly SetUpPrediction[], print: QuantityPrinter, terminal: Terminal): string {
  const head = ['', ...setUps.map(({ id, title }) => (title === '' ? id : title))];
  const cells = rows.map(([label, cell]) => [label, ...setUps.map((setUp) => cell(setUp, print))]);
  return textTable(head, cells, terminal);
}

function differenceLines(
  { id, against, distance_m, byPart, pairing, verdict }: SetUpDifference,
  { setUps }: Prediction,
  print: QuantityPrinter,
  terminal: Terminal,
): string[] {
  const title = (wanted: string): string => setUps.find((setUp) => setUp.id === wanted)?.title ?? wanted;
  const floored = setUps.some((setUp) => setUp.pedalBottoms && [id, against].includes(setUp.id));
  const change = floored ? 'no verdict on distance' : print.difference(distance_m, 'stopping-distance');
  const whole = `${title(id)} against ${title(against)}: ${change}`;
  if (floored) return [terminal.colors.bold(whole), verdict];
  const paired = pairing === null ? [] : [pairing.sentence];
  return [terminal.colors.bold(whole), verdict, ...partTable(byPart, print, terminal), ...paired];
}

/** The split sums to the middle of the difference; parts that buy nothing are named by the verdict. */
function partTable(byPart: SetUpDifference['byPart'], print: QuantityPrinter, terminal: Terminal): string[] {
  if (byPart.length === 0) return [];
  const sum = byPart.reduce((total, { distance_m }) => total + distance_m, 0);
  const buys = (meters: number): string => {
    const text = realMinus(print.quantity(meters, 'stopping-distance', twoFeet));
    return meters > 0 && !/^0(?:\.0*)? /u.test(text) ? `+${text}` : text;
  };
  const parts = byPart.map(({ title, distance_m }) => [`  ${title}`, buys(distance_m)]);
  const rowsWithSum = [...parts, ['  together', buys(sum)]];
  return [textTable(['  Part', 'buys (minus is shorter)'], rowsWithSum, { ...terminal, width: Infinity })];
}
