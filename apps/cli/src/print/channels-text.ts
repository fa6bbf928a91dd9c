import {
  formatQuantity,
  preferredUnit,
  quantityKinds,
  type QuantityKind,
  type UnitSystem,
} from '@standstill/units';
import type { LogReport } from '@standstill/workshop';
import type { Terminal } from '../surface/terminal.ts';
import { issueLine } from './issue-line.ts';
import { quantityPrinter, realMinus } from './quantity-printer.ts';
import { textTable } from './text-table.ts';

type Channel = LogReport['channels'][number];

/** The kind of quantity that a person reads a channel in; the others are shown as plain numbers. */
const kinds: Readonly<Record<string, QuantityKind>> = {
  speed: 'speed',
  'wheel-speed': 'speed',
  'acceleration-forward': 'deceleration',
  'acceleration-lateral': 'deceleration',
  'acceleration-vertical': 'deceleration',
  latitude: 'angle',
  longitude: 'angle',
  heading: 'angle',
  'brake-pressure': 'line-pressure',
  'pedal-force': 'force',
  'pedal-travel': 'travel',
  temperature: 'temperature',
  distance: 'stopping-distance',
  altitude: 'stopping-distance',
};

const who = { format: 'the format', guess: 'a guess from its heading', person: 'you' } as const;

const unitSource = {
  header: 'by the heading',
  format: 'by the format',
  given: 'by your word',
  assumed: 'ASSUMED',
  none: 'no unit',
} as const;

/** What is in a log, for a person: the answer, every column, what is kept unused, sensors, what was skipped. */
export function channelsText(report: LogReport, units: UnitSystem, terminal: Terminal): string {
  const { colors } = terminal;
  const { channels, source } = report;
  const known = channels.filter(({ quantity }) => quantity !== 'unknown');
  const unknown = channels.filter(({ quantity }) => quantity === 'unknown');
  const count = `${known.length} of ${channels.length} columns ${known.length === 1 ? 'is' : 'are'} understood`;
  return [
    [
      colors.bold(
        `${source.name} (${source.format}, ${source.rows} rows, ${quantityPrinter(units).quantity(report.duration_s, 'time')}): ${count}.`,
      ),
    ],
    known.length === 0 ? [] : [channelTable(known, units, terminal)],
    unknown.length === 0
      ? []
      : [
          `Kept and not used: ${unknown.map((channel) => `${channel.name} (${rangeOf(channel, units)})`).join(', ')}.`,
        ],
    [
      'Is one taken for the wrong thing? Say so with --column "role=heading [unit]", e.g. --column "brake-pressure=Brk P [bar]"; --save remembers it.',
    ],
    report.issues.length === 0
      ? [colors.dim('Nothing was skipped.')]
      : [
          colors.bold('Skipped, mended or doubted:'),
          ...report.issues.map((issue) => `  ${issueLine(issue)}`),
        ],
  ]
    .filter((block) => block.length > 0)
    .map((block) => block.join('\n'))
    .join('\n\n');
}

function channelTable(channels: readonly Channel[], units: UnitSystem, terminal: Terminal): string {
  const head = ['Column', 'taken for', 'said by', 'unit', 'values'];
  const rows = channels.map((channel) => [
    channel.name,
    channel.quantity,
    who[channel.chosenBy],
    `${channel.unitAsRead === '' ? '–' : channel.unitAsRead}, ${unitSource[channel.unitOrigin]}`,
    rangeOf(channel, units),
  ]);
  return textTable(head, rows, terminal, 'rows');
}

function rangeOf({ range, quantity }: Channel, units: UnitSystem): string {
  if (range === null || range === undefined) return 'no values';
  const kind = kinds[quantity];
  const { low, high } = range;
  if (kind === undefined)
    return realMinus(low === high ? `always ${plain(low)}` : `${plain(low)} to ${plain(high)}`);
  const unit = preferredUnit(kind, { system: units });
  const { dimension } = quantityKinds[kind];
  const print = (value: number): string =>
    formatQuantity(value, unit, dimension, { significantDigits: kind === 'angle' ? 7 : 3 });
  return realMinus(low === high ? print(low) : `${print(low)} to ${print(high)}`);
}

function plain(value: number): string {
  return String(Number(value.toPrecision(4)));
}
