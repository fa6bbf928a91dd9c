import type { Channel, ChannelTable, SourceClock } from '../../channels/channel-table.ts';
import { isoText } from '../time/clock-text.ts';
import type { FinishedTime } from '../time/finished-time.ts';
import type { ColumnPlan } from './column-plan.ts';
import type { CsvPlan } from './csv-plan.ts';
import type { RowStore } from './row-store.ts';
import type { TimePlan } from './time-plan.ts';

/**
 * The channel table of the rows that a store holds, without what was noted on the way.
 *
 * @param plan - what the columns are
 * @param store - the rows
 * @param finished - their times
 * @param bytes - length of the file
 * @returns the table; where the store goes on being filled, its values hold until then
 */
export function tableOfRows(
  { name, time, columns, headings }: CsvPlan,
  store: RowStore,
  finished: FinishedTime,
  bytes: number,
): Omit<ChannelTable, 'issues'> {
  const values = store.finishColumns();
  const clock = sourceClock(time, finished);
  return {
    time: finished.time,
    channels: columns.map((column, index) => channelOf(column, values[index]!)),
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
