import { randomStream, type RandomStream } from '@standstill/numerics';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import type { ChannelTable } from '../../channels/channel-table.ts';
import { searchStops } from '../../stops/find-stops.ts';
import { readLog } from '../read-log.ts';
import { bytesOf, madeCsv } from './made-csv.testing.ts';
import type { CsvPlan } from './csv-plan.ts';
import { planCsv } from './plan-csv.ts';

const iso = (seconds: number): string =>
  new Date(1_772_366_400_000 + Math.round(1000 * seconds)).toISOString();
const corpus = [
  madeCsv(),
  madeCsv({ newline: '\r\n', header: ['Time [s]', 'Speed [km/h]', 'brake'] }),
  madeCsv({ newline: '\r', delimiter: '|' }),
  madeCsv({ delimiter: ';', decimal: ',', header: ['Time', 'Speed', 'Öl'], units: ['s', 'mph', '°C'] }),
  madeCsv({ delimiter: '\t', preamble: ['made', '', 'a\tb'], header: ['t_ms', 'v (m/s)', 'n'] }),
  madeCsv({ header: ['timestamp', 'Speed [km/h]', 'Brake Temp [°F]'], time: iso }),
  `\uFEFF${madeCsv({ quote: true })}`,
  madeCsv({ quote: true, newline: '\r\n', decimal: ',' }),
].map(bytesOf);

const inserted = [
  '"',
  '""',
  '\n',
  '\r\n',
  '\r',
  ',',
  ';',
  '.',
  '-',
  'e9',
  '0',
  '9999999999',
  ' ',
  '\u0000',
  '\uFEFF',
  'NaN',
  '1,5',
  '1:2:3',
];

/** A file with some of its bytes changed, moved, lost, doubled or cut off. */
function damaged(bytes: Uint8Array, random: RandomStream): Uint8Array {
  const changed = Array.from(bytes);
  for (let change = random.below(10) + 1; change > 0 && changed.length > 1; change -= 1) {
    const at = random.below(changed.length);
    const kind = random.below(6);
    if (kind === 0) changed[at] = random.below(256);
    else if (kind === 1) changed.splice(at, random.below(50));
    else if (kind === 2) changed.splice(at, 0, ...changed.slice(at, at + random.below(80)));
    else if (kind === 3) changed.splice(at, 0, ...bytesOf(inserted[random.below(inserted.length)]!));
    else if (kind === 4)
      changed.splice(random.below(changed.length), 0, ...changed.splice(at, random.below(60)));
    else if (random.below(4) === 0) changed.length = Math.max(1, at);
  }
  return Uint8Array.from(changed);
}

/** What a row of the table may come from: a line, or the few that a quoted field runs over. */
interface Origin {
  readonly fields: readonly string[];
  readonly line: number;
  readonly lines: number;
}

function originsAt(lines: readonly string[], line: number, { dialect }: CsvPlan): readonly Origin[] {
  const { delimiter, newline } = dialect;
  const found: Origin[] = [{ fields: lines[line]!.split(delimiter), line, lines: 1 }];
  if (!lines[line]!.includes('"')) return found;
  for (let count = 1; count <= 4 && line + count <= lines.length; count += 1) {
    const text = lines.slice(line, line + count).join(newline) + newline;
    const { data } = new Papa.Parser({ delimiter, newline, fastMode: false }).parse(text, 0, false);
    found.push({ fields: (data as string[][])[0]!, line, lines: count });
  }
  return found;
}

const patterns = [false, true].map((decimalComma) => {
  const [mark, group] = decimalComma ? [',', '\\.'] : ['\\.', ','];
  return {
    plain: new RegExp(`^[+-]?(\\d+(${mark}\\d*)?|${mark}\\d+)([eE][+-]?\\d+)?$`),
    grouped: new RegExp(`^[+-]?\\d{1,3}(${group}\\d{3})+${mark}\\d+$`),
  };
});

/** The number that stands in a field, read another way than the reader does; NaN where none does. */
function numberIn(field: string, decimalComma: boolean): number {
  const text = field.trim().replace('\u2212', '-');
  const { plain, grouped } = patterns[decimalComma ? 1 : 0]!;
  const isGrouped = grouped.test(text);
  if (!isGrouped && !plain.test(text)) return NaN;
  const bare = isGrouped ? text.replaceAll(decimalComma ? '.' : ',', '') : text;
  const value = Number(bare.replace(',', '.'));
  return Number.isFinite(value) ? value : NaN;
}

function switchIn(field: string, decimalComma: boolean): number {
  const word = field.trim().toLowerCase();
  if (/^(on|true|yes|pressed|active|applied|high)$/.test(word)) return 1;
  return /^(off|false|no|released|inactive|low)$/.test(word) ? 0 : numberIn(field, decimalComma);
}

/** Whether the values of a row, and its time where that is a number, stand in a line. */
function comesFrom(
  origin: Origin,
  row: number,
  table: ChannelTable,
  plan: CsvPlan,
  timeHolds: boolean,
): boolean {
  const { fields } = origin;
  const { decimalComma, width } = plan.dialect;
  if (fields.length !== width && !(fields.length === width + 1 && fields[width]!.trim() === '')) return false;
  const { time } = plan;
  if (time.kind === 'number' && timeHolds) {
    const seconds = numberIn(fields[time.index]!, decimalComma) * time.factor;
    if (seconds !== table.time[row]! + (table.clock?.offsets[0] ?? 0)) return false;
  }
  if (time.kind === 'clock' && timeHolds && time.shape === 'date-time') {
    const seconds = Date.parse(fields[time.index]!.replace(/\s/g, '')) / 1000;
    if (!(Math.abs(seconds - table.time[row]! - table.clock!.offsets[0]!) < 1e-3)) return false;
  }
  return plan.columns.every(({ index, role, factor, shift }, column) => {
    const read = role === 'brake-switch' ? switchIn : numberIn;
    const value = read(fields[index]!, decimalComma);
    const expected = factor === 1 && shift === 0 ? value : value * factor + shift;
    return Object.is(table.channels[column]!.values[row], expected);
  });
}

/** What is wrong with a table that was read of damaged bytes. */
function trouble(bytes: Uint8Array, table: ChannelTable): string | null {
  const plan = planCsv(bytes, bytes.length, { name: 'made' });
  if (!plan.ok) return 'planned otherwise than read';
  const { newline, delimiter, rowsBeforeData } = plan.dialect;
  const text = new TextDecoder(plan.fileEncoding).decode(bytes);
  const lines = text.split(newline);
  const count = (code: string): number =>
    table.issues.reduce((sum, issue) => sum + (issue.code === code ? issue.count : 0), 0);
  const timeHolds = count('clock-jump-back') + count('clock-hour-jump') === 0;
  let at = 0;
  for (let row = 0; row < table.time.length; row += 1) {
    if (row > 0 && !(table.time[row]! > table.time[row - 1]!)) return `time stands still in row ${row}`;
    let found: Origin | undefined;
    for (; found === undefined && at < lines.length; at += found?.lines ?? 1)
      found = originsAt(lines, at, plan).find((origin) => comesFrom(origin, row, table, plan, timeHolds));
    if (found === undefined) return `row ${row} is on no line`;
  }
  if (text.includes('"')) return null;
  const filled = lines
    .slice(rowsBeforeData)
    .filter((line) => line.split(delimiter).some((field) => field.trim() !== ''));
  const told = ['ragged-row', 'row-without-time', 'repeated-time', 'long-line'].reduce(
    (sum, code) => sum + count(code),
    0,
  );
  return filled.length === table.time.length + told
    ? null
    : `${filled.length} lines, ${table.time.length} rows, ${told} skipped`;
}

function troubleWithStops(table: ChannelTable): string | null {
  const { stops, rejected } = searchStops(table, { nominalSpeed: 25 });
  for (const stop of stops) {
    const wrong = Object.entries(stop).find(
      ([, value]) => typeof value === 'number' && !Number.isFinite(value),
    );
    if (wrong !== undefined) return `${wrong[0]} is ${String(wrong[1])}`;
  }
  return rejected.every(({ time, reason }) => Number.isFinite(time) && reason !== '')
    ? null
    : 'a rejection without a reason';
}

const cases = 3000;

test(`of ${cases} damaged files every value that is kept stands on a line of its own, and every line that is not is counted`, () => {
  const seen = { refused: 0, read: 0, skipping: 0 };
  for (let seed = 0; seed < cases; seed += 1) {
    const random = randomStream(4, `damaged/${seed}`);
    const bytes = damaged(corpus[seed % corpus.length]!, random);
    const read = readLog(bytes, { name: 'made' });
    if (!read.ok) {
      seen.refused += 1;
      expect(read.sentence, `case ${seed}`).toMatch(/^made [^\n]{10,}\.$/s);
      continue;
    }
    if (read.table.source.format !== 'CSV') continue;
    seen.read += 1;
    if (read.table.issues.length > 0) seen.skipping += 1;
    expect(trouble(bytes, read.table), `case ${seed}`).toBeNull();
    if (seed % 4 === 0) expect(troubleWithStops(read.table), `case ${seed}`).toBeNull();
  }
  expect(seen.refused).toBeGreaterThan(20);
  expect(seen.read).toBeGreaterThan(cases / 2);
  expect(seen.skipping).toBeGreaterThan(cases / 4);
});
