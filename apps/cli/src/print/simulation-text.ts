import type { UnitSystem } from '@standstill/units';
import type { SetUpSimulation, SimulationReport } from '@standstill/workshop';
import type { Terminal } from '../surface/terminal.ts';
import { assumedLines, assumedSummary } from './assumed-lines.ts';
import { intervalWords } from './interval-words.ts';
import { quantityPrinter, realMinus, type QuantityPrinter } from './quantity-printer.ts';
import { textTable } from './text-table.ts';
import { warningLines } from './warning-lines.ts';

/** A simulation for a person: the answer, dangers, the stops side by side, what each says, what was assumed. */
export function simulationText(
  report: SimulationReport,
  { units, assumed }: { readonly units: UnitSystem; readonly assumed: boolean },
  terminal: Terminal,
): string {
  const print = quantityPrinter(units);
  const { colors } = terminal;
  return [
    [colors.bold(report.sentence)],
    warningLines(report.warnings, ['danger'], colors),
    [conditions(report, print)],
    [stopsTable(report, print, terminal)],
    differenceLines(report, print),
    report.setUps.slice(1).map(({ sentence }) => sentence),
    [energyTable(report, terminal)],
    warningLines(report.warnings, ['caution', 'note'], colors),
    assumed ? assumedLines(report.assumed, colors) : assumedSummary(report.assumed),
  ]
    .filter((block) => block.length > 0)
    .map((block) => block.join('\n'))
    .join('\n\n');
}

function conditions(report: SimulationReport, print: QuantityPrinter): string {
  const { job, speed_m_s, pedalForce_N, soughtDeceleration_m_s2, lockedWheels, surface, draws, seed } =
    report;
  const foot =
    soughtDeceleration_m_s2 === null
      ? `foot at ${print.quantity(pedalForce_N, 'force')}${lockedWheels ? ', held down whatever locks' : ''}`
      : `foot seeking ${print.quantity(soughtDeceleration_m_s2, 'deceleration')}, ${print.quantity(pedalForce_N, 'force')} at most`;
  return `${job}: from ${print.quantity(speed_m_s, 'speed')}, ${surface}, ${foot}. ${intervalWords(draws, seed)}`;
}

function stopsTable({ setUps }: SimulationReport, print: QuantityPrinter, terminal: Terminal): string {
  const row = (title: string, cell: (one: SetUpSimulation) => string): string[] => [
    title,
    ...setUps.map(cell),
  ];
  const rows = [
    row('Stopping distance', ({ distance_m }) => print.estimate(distance_m, 'stopping-distance')),
    row('… by the quick stop of predict', ({ quickDistance_m, distance_m: { low, high } }) =>
      print.quantity(quickDistance_m, 'stopping-distance', (high - low) / 2),
    ),
    row('Time', ({ time_s }) => print.estimate(time_s, 'time')),
    row('Mean deceleration', (one) => print.estimate(one.meanDeceleration_m_s2, 'deceleration')),
    row('… fully developed (80 to 10 % of the speed)', (one) =>
      print.estimate(one.meanFullyDevelopedDeceleration_m_s2, 'deceleration'),
    ),
    row('Of what the tires alone allow', ({ efficiency }) => print.estimate(efficiency, 'share')),
    row('Limited by', ({ limitedBy }) => limitedBy),
    row(
      'ABS lets pressure off, front and rear',
      ({ frontCycles, rearCycles }) => `${frontCycles} and ${rearCycles} times`,
    ),
    row('Front wheels slide on', ({ frontSlideShare }) => wayWords(frontSlideShare, print)),
    row('Rear wheels slide on', ({ rearSlideShare }) => wayWords(rearSlideShare, print)),
    row('Front rotor, hottest face', (one) => print.estimate(one.frontPeakTemperature_degC, 'temperature')),
    row('Rear rotor, hottest face', (one) => print.estimate(one.rearPeakTemperature_degC, 'temperature')),
  ];
  return textTable(['', ...setUps.map(({ title }) => title)], rows, terminal, 'columns');
}

/** Whole percent of the way. */
function wayWords(share: number, print: QuantityPrinter): string {
  return `${print.quantity(share, 'share', 0.02)} of the way`;
}

function differenceLines({ differences, setUps }: SimulationReport, print: QuantityPrinter): string[] {
  const titleOf = (id: string): string => setUps.find((one) => one.id === id)?.title ?? id;
  return differences.map(
    ({ setUp, reference, distance_m }) =>
      `${titleOf(setUp)} against ${titleOf(reference)}: ${print.difference(distance_m, 'stopping-distance')} (minus is shorter).`,
  );
}

const ways = [
  ['brakes', 'Brakes'],
  ['tireSlip', 'Tire slip'],
  ['airDrag', 'Air'],
  ['rolling', 'Rolling'],
  ['driveline', 'Engine'],
  ['climb', 'Grade'],
  ['dampers', 'Dampers'],
  ['left', 'Left at rest'],
] as const;

/** Shares of what the car had; a line for every way that took any. */
function energyTable({ setUps }: SimulationReport, terminal: Terminal): string {
  const rows = ways
    .filter(([key]) => setUps.some(({ energies_J }) => energies_J[key] !== 0))
    .map(([key, title]) => [
      title,
      ...setUps.map(({ energies_J }) => shareWords(energies_J[key] / energies_J.kineticIn)),
    ]);
  return textTable(['Where the energy went', ...setUps.map(({ title }) => title)], rows, terminal, 'columns');
}

function shareWords(share: number): string {
  const percent = 100 * share;
  return Math.abs(percent) < 0.05 ? 'under 0.1 %' : realMinus(`${percent.toFixed(1)} %`);
}
