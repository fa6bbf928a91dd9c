import type { UnitSystem } from '@standstill/units';
import type { HeatReport, SetUpHeat } from '@standstill/workshop';
import type { Terminal } from '../surface/terminal.ts';
import { assumedLines, assumedSummary } from './assumed-lines.ts';
import { intervalWords } from './interval-words.ts';
import { quantityPrinter, type QuantityPrinter } from './quantity-printer.ts';
import { textTable } from './text-table.ts';
import { warningLines } from './warning-lines.ts';

/** Most stops in a table; of more, some are left out in the middle. */
const mostRows = 12;
/** °C; temperatures of single stops print whole tens. */
const fewDegrees = 20;
/** m; prints whole feet. */
const wholeFeet = 0.6096;
/** N; prints whole pounds. */
const wholePounds = 22;
/** m/s; prints whole miles an hour. */
const wholeSpeed = 1.5;

/** Heat for a person: the answer, dangers, a table for each set-up's axles, its stops, other warnings, what was assumed. */
export function heatReportText(
  report: HeatReport,
  { units, assumed }: { readonly units: UnitSystem; readonly assumed: boolean },
  terminal: Terminal,
): string {
  const print = quantityPrinter(units);
  const { colors } = terminal;
  return [
    [colors.bold(report.sentence)],
    warningLines(report.warnings, ['danger'], colors),
    [conditions(report, print)],
    ...report.setUps.flatMap((setUp) => setUpBlocks(setUp, report.setUps.length > 1, print, terminal)),
    warningLines(report.warnings, ['caution', 'note'], colors),
    assumed ? assumedLines(report.assumed, colors) : assumedSummary(report.assumed),
  ]
    .filter((block) => block.length > 0)
    .map((block) => block.join('\n'))
    .join('\n\n');
}

function conditions(
  { job, scheduleText, pedalForce_N, draws, seed }: HeatReport,
  print: QuantityPrinter,
): string {
  const foot = print.quantity(pedalForce_N, 'force');
  return `${job}: ${scheduleText}; a foot has ${foot} where no deceleration is held. ${intervalWords(draws, seed)}`;
}

function setUpBlocks(
  setUp: SetUpHeat,
  isOneOfMany: boolean,
  print: QuantityPrinter,
  terminal: Terminal,
): string[][] {
  const head = isOneOfMany ? [terminal.colors.bold(setUp.sentence)] : [];
  return [
    [...head, axleTable(setUp, print, terminal), ...otherLines(setUp, print)],
    ...(setUp.stops.length === 0 ? [] : [[stopTable(setUp, print, terminal)]]),
  ];
}

function axleTable(setUp: SetUpHeat, print: QuantityPrinter, terminal: Terminal): string {
  const { front, rear } = setUp;
  const limit = (what: string): SetUpHeat['limits'][number] | undefined =>
    setUp.limits.find((one) => one.what === what);
  const row = (label: string, key: 'interface_C' | 'bulk_C' | 'pad_C' | 'fluid_C'): string[] => [
    label,
    print.estimate(front[key], 'temperature'),
    print.estimate(rear[key], 'temperature'),
  ];
  const limits = (label: string, what: 'pads' | 'fluid', key: 'limit_C' | 'margin_K'): string[] => [
    label,
    ...(['front', 'rear'] as const).map((axle) =>
      print.estimate(
        limit(`${axle} ${what}`)?.[key] ?? null,
        key === 'limit_C' ? 'temperature' : 'temperature-difference',
      ),
    ),
  ];
  const share = (what: 'pads' | 'fluid'): string[] =>
    (['front', 'rear'] as const).map((axle) =>
      print.quantity(limit(`${axle} ${what}`)?.passedShare ?? null, 'share', 0.02),
    );
  return textTable(
    ['Hottest', 'front', 'rear'],
    [
      row('Rotor, rubbing face', 'interface_C'),
      limits('… pads fade at', 'pads', 'limit_C'),
      ['… passed in so many draws', ...share('pads')],
      row('Rotor, mean', 'bulk_C'),
      row('Pad, mean', 'pad_C'),
      row('Fluid in the caliper', 'fluid_C'),
      limits('… boils at its age at', 'fluid', 'limit_C'),
      limits('… left to boiling', 'fluid', 'margin_K'),
      ['… boils in so many draws', ...share('fluid')],
    ],
    terminal,
  );
}

function otherLines({ fluid, headroom, last }: SetUpHeat, print: QuantityPrinter): string[] {
  const age = print.estimate(fluid.age_s, 'age');
  const water = print.estimate(fluid.water, 'share');
  const [dry, wet] = [fluid.dryBoiling_C, fluid.wetBoiling_C].map((each) =>
    print.estimate(each, 'temperature'),
  );
  const lines = [`Fluid: age ${age}, water ${water} by volume; boils at ${dry} dry, ${wet} wet.`];
  if (headroom !== null) {
    const { value, low, high } = headroom.stops;
    const beyond = value >= headroom.looked ? `${headroom.looked} or more` : String(Math.round(value));
    const range = low === high ? '' : ` (${Math.floor(low)} to ${Math.ceil(high)})`;
    const what = headroom.first === null ? '' : `; then the ${headroom.first}`;
    lines.push(`Headroom: ${beyond}${range} such stops before something is too hot${what}.`);
  }
  if (last !== null)
    lines.push(
      `Bite of the last stop: ${print.estimate(last.shareOfFirst, 'share')} of the first; under 100 % it slows less for the same foot.`,
    );
  return lines;
}

function stopTable({ stops }: SetUpHeat, print: QuantityPrinter, terminal: Terminal): string {
  const half = Math.floor(mostRows / 2);
  const shown = stops.length <= mostRows ? stops : [...stops.slice(0, half), null, ...stops.slice(-half)];
  const temperature = (value: number): string => print.quantity(value, 'temperature', fewDegrees);
  const rows = shown.map((stop) =>
    stop === null
      ? ['…', '', '', '', '', '', '']
      : [
          `${stop.stop}: ${print.quantity(stop.from_m_s, 'speed', wholeSpeed)} to ${print.quantity(stop.to_m_s, 'speed', wholeSpeed)}`,
          print.quantity(stop.distance_m, 'stopping-distance', wholeFeet),
          print.quantity(stop.pedalForce_N, 'force', wholePounds),
          print.quantity(stop.shareOfFirst, 'share', 0.02),
          temperature(stop.front.interfacePeak_C),
          temperature(stop.rear.interfacePeak_C),
          temperature(Math.max(stop.front.fluidPeak_C, stop.rear.fluidPeak_C)),
        ],
  );
  const head = ['Stop', 'Distance', 'Foot', 'Bite', 'Front rotor', 'Rear rotor', 'Fluid'];
  return textTable(head, rows, terminal, 'rows');
}
