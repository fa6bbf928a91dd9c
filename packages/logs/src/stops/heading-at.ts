import type { ChannelTable } from '../channels/channel-table.ts';
import { rowsBetween } from './rows-between.ts';

/** s before the start over which the heading is averaged; the car is then straight on course. */
const over = 1;

/**
 * The direction in which a car was going when a stop began: the mean of the recorded headings over the second before,
 * or, where positions are slower, of the last one within 3 s.
 *
 * @param table - the log
 * @param start - s on the table's time base
 * @returns rad from north, clockwise, from 0 up to 2 π; null where it is not recorded
 */
export function headingAt(table: ChannelTable, start: number): number | null {
  const heading = table.channels.find(({ quantity }) => quantity === 'heading');
  if (heading === undefined) return null;
  for (const seconds of [over, 3 * over]) {
    const { first, end } = rowsBetween(table, start - seconds, start + 1e-9);
    let [north, east, count] = [0, 0, 0];
    for (let row = first; row < end; row += 1) {
      const value = heading.values[row]!;
      if (Number.isNaN(value)) continue;
      north += Math.cos(value);
      east += Math.sin(value);
      count += 1;
    }
    if (count > 0) return (Math.atan2(east, north) + 2 * Math.PI) % (2 * Math.PI);
  }
  return null;
}
