import { fromUnit, type UnitSystem } from '@standstill/units';
import type { BalanceReport, BalanceState, Estimate, SetUpBalance } from '@standstill/workshop';
import type { Terminal } from '../surface/terminal.ts';
import { assumedLines, assumedSummary } from './assumed-lines.ts';
import { intervalWords } from './interval-words.ts';
import { quantityPrinter, type QuantityPrinter } from './quantity-printer.ts';
import { textTable } from './text-table.ts';
import { warningLines } from './warning-lines.ts';

/** A balance report for a person: the answer, dangers, the yardstick, a table for each state, parking, what changes. */
export function balanceText(
  report: BalanceReport,
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
    [report.annexSentence],
    ...states(report).map((state) => [
      colors.bold(titles[state]),
      stateTable(report, state, print, terminal),
    ]),
    ...report.setUps.map((setUp) => [curveTable(setUp, terminal)]),
    parkingLines(report.setUps),
    report.differences.map(({ verdict }) => verdict),
    warningLines(warnings, ['caution', 'note'], colors),
    assumed ? assumedLines(report.assumed, colors) : assumedSummary(report.assumed),
  ]
    .filter((block) => block.length > 0)
    .map((block) => block.join('\n'))
    .join('\n\n');
}

/** What is alike is told once. */
function parkingLines(setUps: readonly SetUpBalance[]): string[] {
  const sentences = new Set(setUps.map(({ parkingSentence }) => parkingSentence));
  if (sentences.size === 1) return [...sentences];
  return setUps.map(({ title, parkingSentence }) => `${title}: ${parkingSentence}`);
}

const titles = { 'as-tested': 'As tested', laden: 'Laden' } as const;

type State = BalanceState['state'];

function states({ setUps }: BalanceReport): readonly State[] {
  return setUps[0]?.states.map(({ state }) => state) ?? [];
}

function conditions({ job, speed_m_s, surface, draws, seed }: BalanceReport, print: QuantityPrinter): string {
  const speed = print.quantity(speed_m_s, 'speed');
  return `${job}: ${surface} road, at rest and at ${speed}, ABS and EBD taken as failed. ${intervalWords(draws, seed)}`;
}

/** Prints whole percent. */
const wholePercent = 0.02;

type Row = readonly [label: string, cell: (state: BalanceState, print: QuantityPrinter) => string];

const rows: readonly Row[] = [
  ['Mass', ({ mass_kg }, print) => print.estimate(mass_kg, 'car-mass')],
  ['Front share of the load', ({ frontLoadShare }, print) => print.estimate(frontLoadShare, 'share')],
  [
    'Center of gravity height',
    ({ centerOfGravityHeight_m }, print) => print.estimate(centerOfGravityHeight_m, 'car-length'),
  ],
  ['Axle that locks first', ({ firstToLock }) => firstToLock],
  [
    '… in so many draws',
    ({ firstToLockShare }, print) => print.quantity(firstToLockShare, 'share', wholePercent),
  ],
  ['… at', ({ lockDeceleration_g }, print) => print.estimate(inSi(lockDeceleration_g), 'deceleration')],
  ['Front wheels lock at', ({ frontLock_g }, print) => print.estimate(inSi(frontLock_g), 'deceleration')],
  ['Rear wheels lock at', ({ rearLock_g }, print) => print.estimate(inSi(rearLock_g), 'deceleration')],
  ['Brake force at the front', ({ frontForceShare }, print) => print.estimate(frontForceShare, 'share')],
  ['Braking efficiency there', ({ efficiencyAtLock }, print) => print.estimate(efficiencyAtLock, 'share')],
  [
    'Draws with the rear first',
    ({ rearFirst }, print) => print.quantity(rearFirst.share, 'share', wholePercent),
  ],
  [
    '… with the pads hot',
    ({ rearFirst }, print) => print.quantity(rearFirst.shareHot, 'share', wholePercent),
  ],
  ['Rear below front, 0.15–0.80 g', ({ annexFive }) => kept(annexFive.rearBelowFront)],
  ['Least braking rate, k 0.2–0.8', ({ annexFive }) => kept(annexFive.adhesionWithinLimit)],
  ['Rear under z = 0.9 k (FMVSS 135)', ({ annexFive }) => kept(annexFive.rearUnderTorqueWheelLine)],
  [
    'One front brake dead at 0.50 g: turns by',
    ({ pull }, print) => print.estimate(pull?.yawMoment_Nm ?? null, 'torque'),
  ],
  ['… and slows by', ({ pull }, print) => print.estimate(inSi(pull?.left_g ?? null), 'deceleration')],
  ['Steepest grade parked', ({ parking }, print) => print.estimate(parking?.gradeHeld ?? null, 'share')],
];

function kept({
  kept: isKept,
  brokenFrom_g,
  keptShare,
}: BalanceState['annexFive']['rearBelowFront']): string {
  const rounded = Math.round(100 * keptShare);
  const share = keptShare === 1 ? '' : ` (${rounded === 100 ? 'over 99' : rounded} % of the draws)`;
  return isKept ? `kept${share}` : `broken from ${(brokenFrom_g ?? 0).toFixed(2)} g${share}`;
}

/** The result is over g; people read decelerations in their own unit. */
function inSi(overG: Estimate | null): Estimate | null {
  if (overG === null) return null;
  return { value: inMetric(overG.value), low: inMetric(overG.low), high: inMetric(overG.high) };
}

function inMetric(overG: number): number {
  return fromUnit(overG, 'g', 'acceleration');
}

function stateTable(
  { setUps }: BalanceReport,
  state: State,
  print: QuantityPrinter,
  terminal: Terminal,
): string {
  const shown = setUps.flatMap((setUp) => setUp.states.filter((one) => one.state === state));
  const head = ['', ...setUps.map(({ id, title }) => (title === '' ? id : title))];
  return textTable(
    head,
    rows.map(([label, cell]) => [label, ...shown.map((one) => cell(one, print))]),
    terminal,
  );
}

/** Decelerations over g at which the table reads the curves. */
const readAt = [0.2, 0.4, 0.6, 0.8, 1];

/** Friction used by each axle over deceleration, beside what Annex 5 allows. */
function curveTable({ title, states: all }: SetUpBalance, terminal: Terminal): string {
  const head = [`${title}: friction used at`, ...readAt.map((z) => `${z.toFixed(1)} g`)];
  const cells = all.flatMap(({ state, curves }) => {
    const row = (label: string, column: readonly (number | null)[]): string[] => [
      `  ${titles[state]}, ${label}`,
      ...readAt.map((z) => columnAt(curves.deceleration_g, column, z)),
    ];
    return [row('front', curves.frontAdhesion), row('rear', curves.rearAdhesion)];
  });
  const [first] = all;
  const limit =
    first === undefined
      ? []
      : [
          [
            '  most that Annex 5 allows',
            ...readAt.map((z) => columnAt(first.curves.deceleration_g, first.curves.annexFiveLimit, z)),
          ],
        ];
  return textTable(head, [...cells, ...limit], terminal, 'rows');
}

function columnAt(decelerations: readonly number[], column: readonly (number | null)[], z: number): string {
  const index = decelerations.findIndex((one) => Math.abs(one - z) < 1e-9);
  const value = column[index] ?? null;
  return value === null ? '–' : value.toFixed(2);
}
