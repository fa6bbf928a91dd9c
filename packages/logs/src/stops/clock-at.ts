import type { ChannelTable } from '../channels/channel-table.ts';
import { segmentOfRow } from '../channels/segment-of-row.ts';
import { isoText, timeOfDayText } from '../read/time/clock-text.ts';

/**
 * What the source's own clock showed at a moment.
 *
 * @param table - the log
 * @param moment - s on the table's time base
 * @returns ISO time or time of day; null where the source has no clock
 */
export function clockAt(table: ChannelTable, moment: number): string | null {
  if (table.clock === undefined) return null;
  let row = 0;
  let high = table.time.length - 1;
  while (row < high) {
    const middle = (row + high + 1) >> 1;
    if (table.time[middle]! <= moment) row = middle;
    else high = middle - 1;
  }
  const seconds = moment + table.clock.offsets[segmentOfRow(table, row)]!;
  return table.clock.kind === 'date-time' ? isoText(seconds) : timeOfDayText(seconds);
}
