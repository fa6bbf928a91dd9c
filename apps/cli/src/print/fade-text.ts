import type { UnitSystem } from '@standstill/units';
import type { FadeReport, FadeSetResult } from '@standstill/workshop';
import type { Terminal } from '../surface/terminal.ts';
import { quantityPrinter, type QuantityPrinter } from './quantity-printer.ts';
import { textTable } from './text-table.ts';

const definitions = {
  application: 'from the first brake application to rest',
  gate: 'from crossing the nominal speed to rest',
} as const;

/** Stops in a row, for a person: the answer, every stop, the line through them, what the heat has to do with it. */
export function fadeText(report: FadeReport, units: UnitSystem, terminal: Terminal): string {
  const print = quantityPrinter(units);
  const { colors } = terminal;
  const { set, against, slopeDifference_m_per_stop: difference, expectation } = report;
  const sets = [set, ...(against === null ? [] : [against])];
  const speed = print.quantity(report.nominalSpeed_m_s, 'speed');
  return [
    [colors.bold(report.sentence)],
    ...sets.map((each) => [stopTable(each, sets.length > 1, print, terminal), ...setLines(each, print)]),
    [
      ...(difference === null
        ? []
        : [
            `${against?.name ?? ''} minus ${set.name}: ${print.difference(difference, 'stopping-distance')} a stop.`,
          ]),
      ...(expectation === null ? [] : [expectation.sentence]),
      colors.dim(`Distances are ${definitions[report.definition]}, at ${speed}. Intervals are 95 %.`),
    ],
    report.warnings.map((text) => `${colors.yellow('Caution:')} ${text}`),
  ]
    .filter((block) => block.length > 0)
    .map((block) => block.join('\n'))
    .join('\n\n');
}

function stopTable(set: FadeSetResult, several: boolean, print: QuantityPrinter, terminal: Terminal): string {
  const channels = [
    ...new Set(set.stops.flatMap(({ temperatures }) => temperatures.map(({ channel }) => channel))),
  ];
  const head = [several ? `${set.name}: stop` : 'Stop', 'distance', 'rested', ...channels, 'counts'];
  const rows = set.stops.map((stop) => {
    const half = 1.96 * stop.distanceStandardError_m;
    const value = stop.distance_m;
    return [
      String(stop.number),
      print.estimate({ value, low: value - half, high: value + half }, 'stopping-distance'),
      print.quantity(stop.restedFor_s, 'time', 1),
      ...channels.map((channel) =>
        print.quantity(
          stop.temperatures.find((each) => each.channel === channel)?.start_C ?? null,
          'temperature',
          3,
        ),
      ),
      stop.counted ? 'yes' : `no: ${stop.reason ?? ''}`,
    ];
  });
  return textTable(head, rows, terminal, 'rows');
}

function setLines(set: FadeSetResult, print: QuantityPrinter): string[] {
  const { slope_m_per_stop: slope, growth_m: growth, temperatures } = set;
  return [
    ...(slope === null || growth === null
      ? []
      : [
          `${set.name}: each stop ${print.difference(slope, 'stopping-distance')}, over the whole row ${print.difference(growth, 'stopping-distance')}; minus is shorter.${set.bends ? ' A straight line is not enough: the later stops do not follow the first ones.' : ''}`,
        ]),
    ...temperatures.map(({ channel, first_C, highest_C, distance_m_per_100K: effect }) => {
      const range = `${channel}: ${print.quantity(first_C, 'temperature', 3)} at the first stop, ${print.quantity(highest_C, 'temperature', 3)} at the hottest`;
      const hotter = print.quantity(100, 'temperature-difference', 5);
      return effect === null
        ? `${range}.`
        : `${range}; ${print.difference(effect, 'stopping-distance')} for each ${hotter} hotter.`;
    }),
  ];
}
