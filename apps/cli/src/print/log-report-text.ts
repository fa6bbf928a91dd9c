import type { UnitSystem } from '@standstill/units';
import type { LogReport, StopResult } from '@standstill/workshop';
import type { Terminal } from '../surface/terminal.ts';
import { issueLine } from './issue-line.ts';
import { quantityPrinter, type QuantityPrinter } from './quantity-printer.ts';
import { speedHint } from './speed-hint.ts';
import { textTable } from './text-table.ts';

/** What a log holds, for a person: the answer, the stops, why some don't count, what was read and what was doubted. */
export function logReportText(report: LogReport, units: UnitSystem, terminal: Terminal): string {
  const print = quantityPrinter(units);
  const { colors } = terminal;
  return [
    [colors.bold(report.sentence), ...speedHint(report, units)],
    report.stops.length === 0 ? [] : [stopTable(report, print, terminal)],
    judgementLines(report.stops, colors.yellow),
    flagLines(report.stops, colors.yellow),
    assumedUnits(report, colors.yellow),
    [colors.dim(sourceLine(report, print))],
    sensorLines(report).map((line) => colors.dim(line)),
    report.issues.map((issue) => colors.dim(issueLine(issue))),
  ]
    .filter((block) => block.length > 0)
    .map((block) => block.join('\n'))
    .join('\n\n');
}

function stopTable(
  { stops, nominalSpeed_m_s }: LogReport,
  print: QuantityPrinter,
  terminal: Terminal,
): string {
  const nominal = nominalSpeed_m_s === null ? null : print.quantity(nominalSpeed_m_s, 'speed');
  const head = [
    'Stop',
    'starts',
    'from',
    'distance',
    ...(nominal === null ? [] : [`to ${nominal}`, 'gate']),
    'time',
    'mean',
    'fully developed',
    'counts',
  ];
  const rows = stops.map((stop) => {
    const distance = (value: number | null, standardError = stop.distanceStandardError_m): string => {
      if (value === null) return '–';
      const half = 1.96 * standardError;
      return print.estimate({ value, low: value - half, high: value + half }, 'stopping-distance');
    };
    return [
      String(stop.number),
      stop.clock ?? print.quantity(stop.start_s, 'time'),
      print.quantity(stop.entrySpeed_m_s, 'speed'),
      distance(stop.applicationDistance_m),
      ...(nominal === null
        ? []
        : [
            distance(correctable(stop) ? stop.correctedDistance_m : null),
            distance(stop.gateDistance_m, gateError(stop)),
          ]),
      print.quantity(stop.duration_s, 'time', 0.05),
      print.quantity(stop.meanDecelerationByDistance_m_s2, 'deceleration', 0.05),
      print.quantity(stop.meanFullyDevelopedDeceleration_m_s2, 'deceleration', 0.05),
      stop.counted ? 'yes' : 'no',
    ];
  });
  const legend =
    nominal === null
      ? 'distance: brake application to rest, as driven. With --speed it is corrected to one speed.'
      : `distance: brake application to rest, as driven; to ${nominal}: corrected to that speed; gate: from crossing ${nominal} to rest.`;
  return `${textTable(head, rows, terminal, 'rows')}\n${terminal.colors.dim(legend)}`;
}

/** The speed gate knows of no brake signal, so that its delay has no part in the error. */
function gateError(stop: StopResult): number {
  const delay = (stop.startDelayError_s ?? 0) * stop.entrySpeed_m_s;
  return Math.sqrt(Math.max(0, stop.distanceStandardError_m ** 2 - delay ** 2));
}

/** Too far from the nominal speed, a corrected distance is no figure to show. */
function correctable({ flags }: StopResult): boolean {
  return !flags.some(({ code, severity }) => code === 'speed-off-nominal' && severity === 'excludes');
}

/** A person's word, which stands before every flag. */
function judgementLines(stops: readonly StopResult[], paint: (text: string) => string): string[] {
  return stops.flatMap(({ number, judgement }) => {
    if (judgement === null) return [];
    const { verdict, reason, by, date } = judgement;
    const who = [by === null ? 'by hand' : `by ${by}`, ...(date === null ? [] : [date])].join(', ');
    return [`${paint(`Stop ${number}, ${verdict} ${who}:`)} ${reason.replace(/\.$/u, '')}.`];
  });
}

/** What the speed was smoothed from, and what was done with each sensor. */
function sensorLines({ sensors }: LogReport): string[] {
  if (sensors.length < 2) return [];
  return sensors.map(
    ({ channel, used, note }) => `${channel}: ${used ? 'used' : 'not used'}; ${note.replace(/\.$/u, '')}.`,
  );
}

/** One line a reason, with all the stops that it holds for. */
function flagLines(stops: readonly StopResult[], paint: (text: string) => string): string[] {
  const numbers = new Map<string, number[]>();
  const all = stops.flatMap(({ number, flags }) => flags.map((flag) => ({ ...flag, number })));
  for (const { severity, reason, number } of all.toSorted((a, b) => a.severity.localeCompare(b.severity))) {
    const key = `${severity === 'excludes' ? 'left out' : 'look at it'}: ${reason}`;
    numbers.set(key, [...(numbers.get(key) ?? []), number]);
  }
  return [...numbers].map(([text, found]) => {
    const [effect = '', ...reason] = text.split(': ');
    return `${paint(`${found.length === 1 ? 'Stop' : 'Stops'} ${found.join(', ')}, ${effect}:`)} ${reason.join(': ')}`;
  });
}

function assumedUnits({ channels }: LogReport, paint: (text: string) => string): string[] {
  return channels
    .filter(({ unitOrigin }) => unitOrigin === 'assumed')
    .map(
      ({ name, unitAsRead }) =>
        `${paint('Assumed:')} column "${name}" is in ${unitAsRead}; the log does not say.`,
    );
}

function sourceLine({ source, duration_s, channels }: LogReport, print: QuantityPrinter): string {
  const size =
    source.bytes < 1e6 ? `${Math.ceil(source.bytes / 1e3)} kB` : `${(source.bytes / 1e6).toFixed(1)} MB`;
  const names = channels
    .filter(({ quantity }) => quantity !== 'unknown')
    .map(({ name, unitAsRead }) =>
      unitAsRead === '' || name.includes(`[${unitAsRead}]`) ? name : `${name} [${unitAsRead}]`,
    );
  const used = names.length === 0 ? 'no known column' : names.join(', ');
  return `${source.name}: ${source.format}, ${size}, ${source.rows} rows, ${print.quantity(duration_s, 'time')}; ${used}.`;
}
