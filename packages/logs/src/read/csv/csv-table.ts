import type { Channel, ChannelTable, SourceClock } from '../../channels/channel-table.ts';
import type { IssueList } from '../../channels/issue-list.ts';
import type { TextEncoding } from '../bytes/text-encoding.ts';
import { refuseLog } from '../log-refusal.ts';
import type { ReadOutcome } from '../read-log.ts';
import { isoText } from '../time/clock-text.ts';
import { reportSeams } from '../time/report-seams.ts';
import type { FinishedTime } from '../time/time-base.ts';
import type { ColumnPlan } from './column-plan.ts';
import type { CsvDialect } from './csv-dialect.ts';
import { fillByLibrary } from './fill-by-library.ts';
import { fillFromBytes, isPlainBytes } from './fill-from-bytes.ts';
import { rowSink, type RowSink } from './row-sink.ts';
import { startsAtZero } from './time-reader.ts';
import type { TimePlan } from './time-plan.ts';

/** A planned table, ready to be filled. */
export interface PlannedTable {
  readonly bytes: Uint8Array;
  readonly encoding: TextEncoding;
  readonly dialect: CsvDialect;
  readonly time: TimePlan;
  readonly columns: readonly ColumnPlan[];
  /** The headings in one line; null where the file has none. */
  readonly headings: string | null;
  readonly issues: IssueList;
  readonly name: string;
}

/** A way to read the rows of a table. */
export type Fill = (table: PlannedTable, sink: RowSink) => void;

/**
 * Reads the rows of a planned table: by the bytes themselves where no field is quoted, else by the library.
 *
 * @param input - the file and what its columns are
 * @param fill - the way to read the rows
 * @returns the channel table, or why it holds too little
 */
export function csvTable(
  input: PlannedTable,
  fill: Fill = isPlainBytes(input) ? fillFromBytes : fillByLibrary,
): ReadOutcome {
  const { name, bytes, columns, issues, dialect } = input;
  const sink = rowSink(columns, issues, dialect, startsAtZero(input.time) ? 0 : null);
  fill(input, sink);
  const finished = sink.finishTime();
  if (finished.time.length === 0)
    return refuseLog('log-no-rows', name, 'has no row with a time that can be read.');
  if (finished.time.length === 1)
    return refuseLog(
      'log-one-sample',
      name,
      'holds only one sample; a stop needs many, at ten a second or more.',
    );
  reportSeams(finished, issues);
  const channels = columns.map((plan, index) => channelOf(plan, sink.finishColumn(index)));
  if (channels.every(({ quantity, values }) => !/speed/.test(quantity) || values.every(Number.isNaN)))
    issues.add('speed-never-given', null, () => 'The speed column holds no value at all.');
  const clock = sourceClock(input.time, finished);
  const table: ChannelTable = {
    time: finished.time,
    channels,
    segmentStarts: finished.segmentStarts,
    epoch: clock?.kind === 'date-time' ? isoText(clock.offsets[0]!) : null,
    ...(clock === null ? {} : { clock }),
    headings: input.headings,
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
    chosenBy: plan.chosenBy,
    values,
  };
}

function sourceClock(plan: TimePlan, { offsets }: FinishedTime): SourceClock | null {
  if (plan.kind === 'number') return plan.sinceEpoch ? { kind: 'date-time', offsets } : null;
  if (plan.shape === 'minutes-seconds') return null;
  return { kind: plan.shape, offsets };
}
