import type { UnitSystem } from '@standstill/units';
import type { MeasuredPedal, PedalReport } from '@standstill/workshop';
import type { Terminal } from '../surface/terminal.ts';
import { assumedLines, assumedSummary } from './assumed-lines.ts';
import { intervalWords } from './interval-words.ts';
import { quantityPrinter, type QuantityPrinter } from './quantity-printer.ts';
import { textTable } from './text-table.ts';
import { warningLines } from './warning-lines.ts';

/** The pedal for a person: the answer, dangers, the push, its parts, failures, what was measured, what was assumed. */
export function pedalReportText(
  report: PedalReport,
  { units, assumed }: { readonly units: UnitSystem; readonly assumed: boolean },
  terminal: Terminal,
): string {
  const print = quantityPrinter(units);
  const { colors } = terminal;
  return [
    [colors.bold(report.sentence)],
    warningLines(report.warnings, ['danger'], colors),
    [conditions(report, print)],
    ...(report.measured === null ? [] : measuredBlocks(report.measured, print, terminal)),
    [curveTable(report, print, terminal)],
    [partsTable(report, print, terminal)],
    [firmnessTable(report, print, terminal)],
    [failureTable(report, print, terminal), referenceWords(report, print)],
    pushesLines(report, print, terminal),
    otherLines(report, print),
    warningLines(report.warnings, ['caution', 'note'], colors),
    assumed ? assumedLines(report.assumed, colors) : assumedSummary(report.assumed),
  ]
    .filter((block) => block.length > 0)
    .map((block) => block.join('\n'))
    .join('\n\n');
}

function conditions({ job, title, pedalForce_N, draws, seed }: PedalReport, print: QuantityPrinter): string {
  const force = print.quantity(pedalForce_N, 'force');
  return `${job}: ${title}, foot at ${force}. ${intervalWords(draws, seed)}`;
}

/** 100 km/h, m/s. */
const referenceSpeed = 100 / 3.6;
/** m/s; prints whole miles an hour. */
const wholeSpeed = 1.5;
/** N; prints whole pounds. */
const wholePounds = 22;

/** Every fourth point: enough to see the shape. */
function curveTable({ curve, push }: PedalReport, print: QuantityPrinter, terminal: Terminal): string {
  const rows = curve
    .filter((_, index) => index > 0 && index % 4 === 0)
    .map((point) => [
      print.quantity(point.pedalForce_N, 'force', wholePounds),
      print.estimate(point.travel_m, 'travel'),
      print.estimate(point.frontLinePressure_Pa, 'line-pressure'),
      print.estimate(point.rearLinePressure_Pa, 'line-pressure'),
    ]);
  const share = `Share of the travel used at the end: ${print.estimate(push.travelShare, 'share')}; left at the cylinder: ${print.estimate(push.strokeReserve_m, 'travel')}.`;
  return `${textTable(['Foot on the pedal', 'Travel', 'Front line', 'Rear line'], rows, terminal, 'rows')}\n${share}`;
}

function partsTable({ parts, push }: PedalReport, print: QuantityPrinter, terminal: Terminal): string {
  const rows = parts
    .toSorted((a, b) => b.travel_m.value - a.travel_m.value)
    .map(({ title, travel_m }) => [title, print.estimate(travel_m, 'travel')]);
  return textTable(
    ['Where the travel goes', ''],
    [...rows, ['together', print.estimate(push.travel_m, 'travel')]],
    terminal,
  );
}

function firmnessTable({ firmness }: PedalReport, print: QuantityPrinter, terminal: Terminal): string {
  const rows = firmness.map(({ deceleration_m_s2, pedalForce_N, firmness_N_m }) => [
    deceleration_m_s2 === null
      ? `at ${print.quantity(pedalForce_N.value, 'force')}`
      : `at ${print.quantity(deceleration_m_s2, 'deceleration')}, ${print.estimate(pedalForce_N, 'force')}`,
    print.estimate(firmness_N_m, 'stiffness'),
  ]);
  return textTable(['Firmness of the pedal', ''], rows, terminal);
}

type State = Omit<NonNullable<PedalReport['assistLost']>, never>;

function failureTable(report: PedalReport, print: QuantityPrinter, terminal: Terminal): string {
  const states: (readonly [string, State])[] = report.circuitsLost.map((lost) => [
    `${lost.title} lost`,
    lost,
  ]);
  if (report.assistLost !== null) states.push(['Assist lost', report.assistLost]);
  const rows: (readonly [string, (state: State) => string])[] = [
    ['Force for the reference', (state) => print.estimate(state.pedalForceAtReference_N, 'force')],
    ['Travel there', (state) => print.estimate(state.travel_m, 'travel')],
    ['Travel left there', (state) => print.estimate(state.travelLeft_m, 'travel')],
    ['Has travel up to', (state) => print.estimate(state.pedalForceThere_N, 'force')],
    ['Front line there', (state) => print.estimate(state.frontLinePressure_Pa, 'line-pressure')],
    ['Rear line there', (state) => print.estimate(state.rearLinePressure_Pa, 'line-pressure')],
    ['Deceleration there', (state) => print.estimate(state.deceleration_m_s2, 'deceleration')],
    [
      `From ${print.quantity(referenceSpeed, 'speed', wholeSpeed)}`,
      (state) => print.estimate(state.distanceFrom100_m, 'stopping-distance'),
    ],
  ];
  const cells = rows.map(([label, cell]) => [label, ...states.map(([, state]) => cell(state))]);
  return textTable(['', ...states.map(([title]) => title)], cells, terminal);
}

/** m/s²; prints hundredths of g. */
const wholeHundredth = 0.2;

function referenceWords({ reference }: PedalReport, print: QuantityPrinter): string {
  const deceleration = print.quantity(reference.deceleration_m_s2, 'deceleration', wholeHundredth);
  return `The reference is ${deceleration} with no more than ${print.quantity(reference.pedalForce_N, 'force', wholePounds)}: ${reference.source}.`;
}

function pushesLines(
  { pushesWithoutEngine, pedalForce_N }: PedalReport,
  print: QuantityPrinter,
  terminal: Terminal,
): string[] {
  if (pushesWithoutEngine === null) return [];
  const shown = untilAlike(pushesWithoutEngine);
  const isLast = (push: number): boolean =>
    shown.length < pushesWithoutEngine.length && push === shown.at(-1)?.push;
  const rows = shown.map(({ push, vacuum_Pa, frontLinePressure_Pa, travel_m }) => [
    isLast(push) ? `${push} and more` : String(push),
    print.estimate(vacuum_Pa, 'vacuum'),
    print.estimate(frontLinePressure_Pa, 'line-pressure'),
    print.estimate(travel_m, 'travel'),
  ]);
  const head = [
    `Push of ${print.quantity(pedalForce_N, 'force')}, engine off`,
    'Vacuum before',
    'Front line',
    'Travel',
  ];
  return [textTable(head, rows, terminal, 'rows')];
}

/** Pushes after the first without vacuum are all alike. */
function untilAlike<Push extends { readonly vacuum_Pa: { readonly high: number } }>(
  pushes: readonly Push[],
): readonly Push[] {
  const last = pushes.findIndex(({ vacuum_Pa }) => vacuum_Pa.high <= 0);
  return last < 0 ? pushes : pushes.slice(0, last + 1);
}

function otherLines(report: PedalReport, print: QuantityPrinter): string[] {
  const { knockBack_m, hotFluid, fastPush_m, wornPads, boosterRunOut_N } = report;
  const runOut =
    boosterRunOut_N === null
      ? []
      : [`The booster has given all it has at ${print.estimate(boosterRunOut_N, 'force')}.`];
  return [
    ...runOut,
    `First push after a bend: up to ${print.estimate(knockBack_m, 'travel')} more travel (pads pushed back by run-out, bearing play, axle float).`,
    `Fluid at ${print.quantity(hotFluid.temperature_C, 'temperature', 5)}: ${print.estimate(hotFluid.extraTravel_m, 'travel')} more travel. A fast push: ${print.estimate(fastPush_m, 'travel')} less.`,
    `From these pads to worn ones the calipers take ${print.estimate(wornPads.demand_m3, 'fluid-volume')}; the reservoir has ${print.estimate(wornPads.reservoir_m3, 'fluid-volume')} between its marks.`,
  ];
}

function measuredBlocks(measured: MeasuredPedal, print: QuantityPrinter, terminal: Terminal): string[][] {
  const engine = measured.engine === 'off' ? 'engine off, vacuum pumped out' : 'engine running';
  const points = measured.points.map(
    ({ pedalForce_N, frontLinePressure_Pa, travel_m, expectedTravel_m, plugged, used }) => [
      print.quantity(pedalForce_N, 'force'),
      print.quantity(frontLinePressure_Pa, 'line-pressure', 0.03 * frontLinePressure_Pa),
      print.quantity(travel_m, 'travel', measured.travelSpread_m),
      print.quantity(expectedTravel_m, 'travel', measured.travelSpread_m),
      `${plugged.length > 0 ? `plugged: ${plugged.join(', ')}` : ''}${used ? '' : ' left out'}`.trim(),
    ],
  );
  const found = [
    [
      'Travel before the pads bite',
      print.estimate(measured.offset_m, 'travel'),
      print.estimate(measured.expectedOffset_m, 'travel'),
    ],
    [
      'Trapped air',
      print.estimate(measured.air_m3, 'fluid-volume'),
      print.estimate(measured.expectedAir_m3, 'fluid-volume'),
    ],
    [
      'Give under pressure',
      print.estimate(measured.compliance_m3_Pa, 'caliper-stretch'),
      print.estimate(measured.expectedCompliance_m3_Pa, 'caliper-stretch'),
    ],
  ];
  const split = measured.split.map(({ title, prior_m, posterior_m, narrowing, told }) => [
    title,
    print.estimate(prior_m, 'travel'),
    print.estimate(posterior_m, 'travel'),
    `${Math.round(100 * narrowing)} %`,
    told ? 'yes' : 'no',
  ]);
  const condition = `How well the three are told apart (condition number): ${rounded(measured.conditionNumber)}; past 100 hardly. ${splitWords(measured.splitConditionNumber)} The points scatter ${measured.scatter.toFixed(1)} times as much as their stated spread. Below, Range is the width with the points in percent of that by the job.`;
  return [
    [measured.verdict],
    [
      textTable(
        [`Measured, ${engine}`, 'Front line', 'Travel', 'By the parts', ''],
        points,
        terminal,
        'rows',
      ),
    ],
    [textTable(['', 'Measured', 'By the parts of the job'], found, terminal, 'rows'), condition],
    [
      textTable(
        ['Travel at the hardest push', 'By the job', 'With the points', 'Range', 'Told apart'],
        split,
        terminal,
        'rows',
      ),
    ],
  ];
}

/** Of single parts. */
function splitWords(conditionNumber: number | null): string {
  return conditionNumber === null
    ? 'Single parts can not be told apart by these points alone.'
    : `Single parts: ${rounded(conditionNumber)}.`;
}

function rounded(value: number): string {
  return value >= 1000 ? value.toExponential(0) : value.toPrecision(2);
}
