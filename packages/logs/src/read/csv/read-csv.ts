import type { Channel, ChannelTable, SourceClock } from '../../channels/channel-table.ts';
import { GrowingColumn } from '../../channels/growing-column.ts';
import { issueList, type IssueList } from '../../channels/issue-list.ts';
import { textChunks } from '../bytes/text-chunks.ts';
import { textEncoding, type TextEncoding } from '../bytes/text-encoding.ts';
import { quotedList, refuseLog, type LogRefusal } from '../log-refusal.ts';
import type { ReadOptions, ReadOutcome } from '../read-log.ts';
import { clockSeconds } from '../time/clock-seconds.ts';
import { isoText } from '../time/clock-text.ts';
import { midnightCounter } from '../time/midnight-counter.ts';
import { timeBase, type FinishedTime } from '../time/time-base.ts';
import { reportSeams } from '../time/report-seams.ts';
import { columnLabels } from './column-labels.ts';
import type { ColumnPlan } from './column-plan.ts';
import type { CsvDialect } from './csv-dialect.ts';
import { csvRows } from './csv-rows.ts';
import { detectDialect } from './detect-dialect.ts';
import { isGapWord, numberField } from './number-field.ts';
import { planColumns } from './plan-columns.ts';
import { switchField } from './switch-field.ts';
import { timePlan, type TimePlan } from './time-plan.ts';
import { isLogUnit } from './unit-scale.ts';

const sampleLength = 1 << 16;

/**
 * Reads a CSV log: any delimiter, decimal sign, headings, row of units; the rows streamed through papaparse, so that
 * a large file is never one string. What is skipped is counted with the first line that shows it.
 *
 * @param bytes - the whole file
 * @param options - name and a person's word on the columns
 * @returns the channel table, or why the file can't be used
 */
export function readCsv(bytes: Uint8Array, options: ReadOptions): ReadOutcome {
  const encoding = textEncoding(bytes);
  const [start = ''] = textChunks(bytes.subarray(0, sampleLength), encoding);
  const dialect = detectDialect(start, bytes.length <= sampleLength, isLogUnit);
  if (dialect === null)
    return refuseLog(
      'log-not-a-table',
      options.name,
      'is neither NMEA 0183 nor a table with commas, semicolons, tabs or bars between its columns; export the log as CSV.',
    );
  const issues = issueList();
  if (dialect.preambleRows > 0)
    issues.add(
      'lines-above-headings',
      1,
      () => `${dialect.preambleRows} lines above the headings were not read.`,
    );
  const labels = columnLabels(dialect, dialect.preambleRows + 1, issues);
  const choices = choicesOf(options);
  const planned = planColumns({ name: options.name, dialect, labels, choices, issues });
  if (!planned.ok) return planned;
  const time = timePlan(dialect, planned.columns, issues);
  if (time === null)
    return refuseLog(
      'log-no-time',
      options.name,
      `has no column that tells the time; its columns are ${quotedList(labels)}. Say which one is the time.`,
    );
  const columns = planned.columns
    .filter(({ index }) => index !== time.index)
    .map(withScale(options.speedScale));
  const speedTrouble = speedRefusal(options.name, columns, labels);
  if (speedTrouble !== null) return speedTrouble;
  const usable = columns.filter(({ isText }) => !isText).map(withoutDoubtfulSpeed);
  return tableOf({ bytes, encoding, dialect, time, columns: usable, issues, name: options.name });
}

function choicesOf(options: ReadOptions): NonNullable<ReadOptions['columns']> {
  const columns = options.columns ?? {};
  return options.timeColumn === undefined || columns.time !== undefined
    ? columns
    : { ...columns, time: { name: options.timeColumn } };
}

function speedRefusal(
  name: string,
  columns: readonly ColumnPlan[],
  labels: readonly string[],
): LogRefusal | null {
  const speeds = columns.filter(({ role }) => role === 'speed' || role === 'wheel-speed');
  if (speeds.length === 0)
    return refuseLog(
      'log-no-speed',
      name,
      `has no column that tells the speed; its columns are ${quotedList(labels)}. Say which one is the speed and in which unit.`,
    );
  if (speeds.some(({ factor }) => Number.isFinite(factor))) return null;
  const { label, unitAsRead } = speeds[0]!;
  if (unitAsRead !== '')
    return refuseLog(
      'log-unknown-unit',
      name,
      `has its speed '${label}' in the unknown unit '${unitAsRead}'; say which unit it is: km/h, mph, m/s, kn or ft/s.`,
    );
  return refuseLog(
    'log-speed-without-unit',
    name,
    `does not say in which unit its speed '${label}' is; say it: km/h, mph, m/s, kn or ft/s, with a full scale if the numbers run from 0 to 1.`,
  );
}

/** A scale given for a speed without a unit. */
function withScale(scale: number | undefined): (plan: ColumnPlan) => ColumnPlan {
  if (scale === undefined) return (plan) => plan;
  return (plan) => (Number.isFinite(plan.factor) ? plan : { ...plan, unitOrigin: 'given', factor: scale });
}

/** Beside a speed with a unit, one without is kept as it stands and not used. */
function withoutDoubtfulSpeed(plan: ColumnPlan): ColumnPlan {
  return Number.isFinite(plan.factor) ? plan : { ...plan, role: 'unknown', factor: 1 };
}

interface TableInput {
  readonly bytes: Uint8Array;
  readonly encoding: TextEncoding;
  readonly dialect: CsvDialect;
  readonly time: TimePlan;
  readonly columns: readonly ColumnPlan[];
  readonly issues: IssueList;
  readonly name: string;
}

function tableOf(input: TableInput): ReadOutcome {
  const { name, bytes, columns, issues } = input;
  const stores = columns.map(() => new GrowingColumn());
  const finished = fill(input, stores);
  if (finished.time.length === 0)
    return refuseLog('log-no-rows', name, 'has no row with a time that can be read.');
  if (finished.time.length === 1)
    return refuseLog(
      'log-one-sample',
      name,
      'holds only one sample; a stop needs many, at ten a second or more.',
    );
  reportSeams(finished, issues);
  const channels = columns.map((plan, index) => channelOf(plan, stores[index]!.finish()));
  if (channels.every(({ quantity, values }) => !/speed/.test(quantity) || values.every(Number.isNaN)))
    issues.add('speed-never-given', null, () => 'The speed column holds no value at all.');
  const clock = sourceClock(input.time, finished);
  const table: ChannelTable = {
    time: finished.time,
    channels,
    segmentStarts: finished.segmentStarts,
    epoch: clock?.kind === 'date-time' ? isoText(clock.offsets[0]!) : null,
    ...(clock === null ? {} : { clock }),
    source: { name, format: 'CSV', bytes: bytes.length, rows: finished.time.length },
    issues: issues.list(),
  };
  return { ok: true, table };
}

function channelOf(plan: ColumnPlan, values: Float64Array): Channel {
  const { factor, shift } = plan;
  if (factor !== 1 || shift !== 0)
    for (let i = 0; i < values.length; i += 1) values[i] = values[i]! * factor + shift;
  return {
    name: plan.label,
    quantity: plan.role === 'time' ? 'unknown' : plan.role,
    unitAsRead: plan.unitAsRead,
    unitOrigin: plan.unitOrigin,
    values,
  };
}

function sourceClock(plan: TimePlan, { offsets }: FinishedTime): SourceClock | null {
  if (plan.kind === 'number') return plan.sinceEpoch ? { kind: 'date-time', offsets } : null;
  if (plan.shape === 'minutes-seconds') return null;
  return { kind: plan.shape, offsets };
}

/** Reads all rows into the columns; the hot loop of this room. */
function fill(input: TableInput, stores: readonly GrowingColumn[]): FinishedTime {
  const { dialect, columns, issues } = input;
  const { width, decimalComma, rowsBeforeData } = dialect;
  const secondsOf = timeReader(input.time, decimalComma);
  const base = timeBase(startsAtZero(input.time) ? 0 : null);
  let before = rowsBeforeData;
  for (const batch of csvRows(textChunks(input.bytes, input.encoding), dialect)) {
    if (batch.openQuote)
      issues.add(
        'open-quote',
        batch.lineOf(0),
        () => 'A quotation mark is never closed; the lines were split without minding it.',
      );
    if (batch.leftOut > 0)
      issues.add(
        'long-line',
        batch.lineOf(batch.rows.length),
        () => 'A line far too long for a log was skipped.',
      );
    const { rows } = batch;
    for (let r = 0; r < rows.length; r += 1) {
      if (before > 0) {
        before -= 1;
        continue;
      }
      const row = rows[r]!;
      if (row.length !== width && !hasEmptyTail(row, width)) {
        if (!isBlank(row))
          issues.add(
            'ragged-row',
            batch.lineOf(r),
            () => `Rows with more or fewer than ${width} fields were skipped.`,
          );
        continue;
      }
      const time = secondsOf(field(row, input.time.index, width));
      if (Number.isNaN(time)) {
        issues.add(
          'row-without-time',
          batch.lineOf(r),
          () => 'Rows whose time can not be read were skipped.',
        );
        continue;
      }
      if (!base.offer(time)) {
        issues.add(
          'repeated-time',
          batch.lineOf(r),
          () => 'Rows at the very time of the row before were skipped.',
        );
        continue;
      }
      for (let c = 0; c < columns.length; c += 1) {
        const plan = columns[c]!;
        const text = field(row, plan.index, width);
        const value =
          plan.role === 'brake-switch' ? switchField(text, decimalComma) : numberField(text, decimalComma);
        stores[c]!.push(value);
        if (Number.isNaN(value) && text !== '' && !isGapWord(text))
          issues.add(
            'not-a-number',
            batch.lineOf(r),
            () => `Column '${plan.label}' holds fields that are no numbers; they are gaps.`,
            plan.label,
          );
      }
    }
  }
  return base.finish();
}

/** The last field of a row whose line ends in CR LF carries the CR. */
function field(row: readonly string[], index: number, width: number): string {
  const text = row[index]!;
  return index === width - 1 && text.endsWith('\r') ? text.slice(0, -1) : text;
}

/** A delimiter behind the last field makes one empty field more. */
function hasEmptyTail(row: readonly string[], width: number): boolean {
  return row.length === width + 1 && row[width]!.trim() === '';
}

function isBlank(row: readonly string[]): boolean {
  return row.every((text) => text.trim() === '');
}

/** Plain seconds keep their own zero, so that a person finds a moment of the log again. */
function startsAtZero(plan: TimePlan): boolean {
  return plan.kind === 'number' ? !plan.sinceEpoch : plan.shape === 'minutes-seconds';
}

function timeReader(plan: TimePlan, decimalComma: boolean): (text: string) => number {
  if (plan.kind === 'number') {
    const { factor } = plan;
    return (text) => numberField(text, decimalComma) * factor;
  }
  const { shape } = plan;
  if (shape !== 'time-of-day') return (text) => clockSeconds(text, shape);
  const continued = midnightCounter();
  return (text) => continued(clockSeconds(text, shape));
}
