import type { Channel, ChannelTable, SourceClock } from '../../channels/channel-table.ts';
import { refuseLog } from '../log-refusal.ts';
import type { ReadOutcome } from '../read-log.ts';
import { isoText } from '../time/clock-text.ts';
import type { FinishedTime } from '../time/finished-time.ts';
import { reportSeams } from '../time/report-seams.ts';
import type { ColumnPlan } from './column-plan.ts';
import type { CsvPlan } from './csv-plan.ts';
import type { RowStore } from './row-store.ts';
import type { TimePlan } from './time-plan.ts';

/**
 * Makes the channel table of the rows that were read.
 *
 * @param plan - what the columns are
 * @param store - the rows
 * @param bytes - length of the file
 * @returns the channel table, or why it holds too little
 */
export function csvTable(plan: CsvPlan, store: RowStore, bytes: number): ReadOutcome {
  const { name, issues } = plan;
  const finished = store.finishTime();
  if (finished.time.length === 0)
    return refuseLog('log-no-rows', name, 'has no row with a time that can be read.');
  if (finished.time.length === 1)
    return refuseLog(
      'log-one-sample',
      name,
      'holds only one sample; a stop needs many, at ten a second or more.',
    );
  reportSeams(finished, issues);
  const values = store.finishColumns();
  const channels = plan.columns.map((column, index) => channelOf(column, values[index]!));
  if (channels.every(({ quantity, values: all }) => !/speed/.test(quantity) || all.every(Number.isNaN)))
    issues.add('speed-never-given', null, () => 'The speed column holds no value at all.');
  return { ok: true, table: { ...tableOf(plan, finished, channels, bytes), issues: issues.list() } };
}

function tableOf(
  { name, time, headings }: CsvPlan,
  finished: FinishedTime,
  channels: readonly Channel[],
  bytes: number,
): Omit<ChannelTable, 'issues'> {
  const clock = sourceClock(time, finished);
  return {
    time: finished.time,
    channels,
    segmentStarts: finished.segmentStarts,
    epoch: clock?.kind === 'date-time' ? isoText(clock.offsets[0]!) : null,
    ...(clock === null ? {} : { clock }),
    headings,
    source: { name, format: 'CSV', bytes, rows: finished.time.length },
  };
}

function channelOf(plan: ColumnPlan, values: Float64Array): Channel {
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
