import type { Channel, ChannelQuantity, ChannelTable } from '../../channels/channel-table.ts';
import { GrowingColumn } from '../../channels/growing-column.ts';
import { issueList, type IssueList } from '../../channels/issue-list.ts';
import { textChunks } from '../bytes/text-chunks.ts';
import { refuseLog } from '../log-refusal.ts';
import { withSpeedFromPositions } from '../positions/with-speed-from-positions.ts';
import type { ReadOptions, ReadOutcome } from '../read-log.ts';
import { isoText } from '../time/clock-text.ts';
import { reportSeams } from '../time/report-seams.ts';
import { timeBase } from '../time/time-base.ts';
import { checkSentence } from './check-sentence.ts';
import { dayKeeper } from './day-keeper.ts';
import { fixRows, type FixRow } from './fix-rows.ts';
import { textLines } from '../lines/text-lines.ts';
import { isFixSentence, readFix } from './read-fix.ts';

/** One channel of an NMEA log and where a moment holds its value. */
interface FixColumn {
  readonly name: string;
  readonly quantity: ChannelQuantity;
  readonly unit: string;
  readonly of: (row: FixRow) => number;
}

const columns: readonly FixColumn[] = [
  { name: 'RMC speed', quantity: 'speed', unit: 'kn', of: (row) => unlessVoid(row, row.recommended?.speed) },
  { name: 'VTG speed', quantity: 'speed', unit: 'kn', of: (row) => unlessVoid(row, row.course?.speed) },
  {
    name: 'heading',
    quantity: 'heading',
    unit: '°',
    of: (row) => unlessVoid(row, row.recommended?.heading ?? row.course?.heading),
  },
  {
    name: 'latitude',
    quantity: 'latitude',
    unit: '°',
    of: (row) => unlessVoid(row, (row.recommended ?? row.position)?.latitude),
  },
  {
    name: 'longitude',
    quantity: 'longitude',
    unit: '°',
    of: (row) => unlessVoid(row, (row.recommended ?? row.position)?.longitude),
  },
  { name: 'altitude', quantity: 'altitude', unit: 'm', of: (row) => unlessVoid(row, row.position?.altitude) },
  { name: 'GGA fix quality', quantity: 'fix-quality', unit: '', of: (row) => row.position?.quality ?? NaN },
  { name: 'satellites', quantity: 'unknown', unit: '', of: (row) => row.position?.satellites ?? NaN },
  { name: 'horizontal dilution', quantity: 'unknown', unit: '', of: (row) => row.position?.dilution ?? NaN },
];

/**
 * Reads an NMEA 0183 log: every checksum verified, sentences of one moment gathered in one row. A fix that the
 * receiver calls void leaves a gap, never a zero.
 *
 * Assumes: VTG follows the sentence that names its moment.
 *
 * @param bytes - the whole file
 * @param options - name of the file
 * @returns the channel table, or why the file can't be used
 */
export function readNmea(bytes: Uint8Array, options: ReadOptions): ReadOutcome {
  const { name } = options;
  const issues = issueList();
  const time = timeBase(null);
  const stores = columns.map(() => new GrowingColumn());
  const days = dayKeeper();
  const rows = fixRows((row) => {
    if (row.isVoid && row.recommended?.isVoid !== true) issues.add('void-fix', row.line, voidFix);
    if (!time.offer(days.secondsOf(row))) {
      issues.add('repeated-time', row.line, () => 'Moments at the very time of the one before were skipped.');
      return;
    }
    columns.forEach((column, index) => stores[index]!.push(column.of(row)));
  });
  readSentences(bytes, issues, rows.add);
  rows.end();
  const finished = time.finish();
  if (finished.time.length < 2) return tooShort(name, finished.time.length, issues);
  reportSeams(finished, issues);
  const all = columns.map((column, index) => channelOf(column, stores[index]!.finish()));
  const channels = all.filter(holdsValues);
  const hasPlaces = channels.some(({ quantity }) => quantity === 'latitude');
  const speaksOfSpeed = channels.some(({ quantity }) => quantity === 'speed');
  if (!speaksOfSpeed && !hasPlaces && issues.count('void-fix') > 0) channels.unshift(all[0]!);
  const dated = days.isKnown();
  if (!dated) issues.add('no-date', null, () => 'No sentence tells the date; times are times of day, UTC.');
  const offsets = finished.offsets.map((offset) => offset + days.baseSeconds());
  const table: ChannelTable = {
    time: finished.time,
    channels,
    segmentStarts: finished.segmentStarts,
    epoch: dated ? isoText(offsets[0]!) : null,
    headings: null,
    clock: { kind: dated ? 'date-time' : 'time-of-day', offsets },
    source: { name, format: 'NMEA 0183', bytes: bytes.length, rows: finished.time.length },
    issues: issues.list(),
  };
  if (channels.some(({ quantity }) => quantity === 'speed')) return { ok: true, table };
  return (
    withSpeedFromPositions(table, issues) ??
    refuseLog(
      'log-no-speed',
      name,
      'holds no RMC and no VTG sentence with a speed; switch one of them on in the receiver.',
    )
  );
}

function readSentences(bytes: Uint8Array, issues: IssueList, add: ReturnType<typeof fixRows>['add']): void {
  const lines = textLines(textChunks(bytes, 'windows-1252'), (line) =>
    issues.add('long-line', line, () => 'Lines far too long for a log were skipped.'),
  );
  for (const { text, number } of lines) {
    if (text.startsWith('#') || text.startsWith(';')) continue;
    const [before = '', ...pieces] = text.split('$');
    if (pieces.length === 0)
      issues.add('not-a-sentence', number, () => 'Lines that are no sentence and no comment were skipped.');
    else if (before.trim() !== '' || pieces.length > 1)
      issues.add('torn-line', number, () => 'Remains of a torn sentence share a line with another one.');
    for (const piece of pieces) readSentence(`$${piece}`, number, issues, add);
  }
}

function readSentence(
  piece: string,
  line: number,
  issues: IssueList,
  add: ReturnType<typeof fixRows>['add'],
): void {
  const checked = checkSentence(piece);
  if (checked.kind !== 'sentence') {
    issues.add(checked.kind, line, () => skipped[checked.kind]);
    return;
  }
  if (!isFixSentence(checked.text)) return;
  const part = readFix(checked.text);
  if (part === null) {
    issues.add(
      'not-understood',
      line,
      () => 'Sentences with a good checksum break their own format and were skipped.',
    );
    return;
  }
  if (part.type === 'RMC' && part.isVoid) issues.add('void-fix', line, voidFix);
  if (!add(part, line) && part.type === 'VTG')
    issues.add('speed-without-time', line, () => 'Speeds before the first moment were skipped.');
}

const voidFix = (): string => 'The receiver calls its fix void; speed and position are gaps there.';

const skipped = {
  'bad-checksum': 'Sentences with a wrong checksum were skipped.',
  'no-checksum': 'Sentences without a checksum were skipped.',
  'not-ascii': 'Sentences with bytes that are not ASCII were skipped.',
} as const;

function tooShort(name: string, rows: number, issues: IssueList): ReadOutcome {
  const bad = issues.count('bad-checksum') + issues.count('no-checksum') + issues.count('not-ascii');
  if (rows === 1)
    return refuseLog(
      'log-one-sample',
      name,
      'holds only one moment; a stop needs many, at ten a second or more.',
    );
  const why = bad > 0 ? ` (${bad} sentences have no good checksum)` : '';
  return refuseLog('log-no-rows', name, `holds no RMC, GGA or ZDA sentence that names a time${why}.`);
}

function unlessVoid(row: FixRow, value: number | undefined): number {
  return row.isVoid ? NaN : (value ?? NaN);
}

function channelOf({ name, quantity, unit }: FixColumn, values: Float64Array): Channel {
  return {
    name,
    quantity,
    unitAsRead: unit,
    unitOrigin: unit === '' ? 'none' : 'format',
    chosenBy: 'format',
    values,
  };
}

function holdsValues({ values }: Channel): boolean {
  return !values.every(Number.isNaN);
}
