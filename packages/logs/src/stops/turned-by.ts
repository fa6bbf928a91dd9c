import type { ChannelTable } from '../channels/channel-table.ts';
import { rowsBetween } from './rows-between.ts';
import { speedAt } from './speed-at.ts';
import type { SpeedRun } from './speed-run.ts';

/** m/s; a slower receiver does not know where it is heading. */
const knowsHeading = 5;

/**
 * By how much a car turned during a stop, while it was fast enough for a heading to mean something.
 *
 * @param table - the log
 * @param stop - s and m/s from the start to rest
 * @param start - s
 * @param end - s
 * @returns rad, the greatest turn from the heading at the start; null where the log has no heading
 */
export function turnedBy(table: ChannelTable, stop: SpeedRun, start: number, end: number): number | null {
  const heading = table.channels.find(({ quantity }) => quantity === 'heading');
  if (heading === undefined) return null;
  const { first, end: last } = rowsBetween(table, start, end);
  let begin: number | null = null;
  let turn = 0;
  for (let row = first; row < last; row += 1) {
    const value = heading.values[row]!;
    if (Number.isNaN(value) || speedAt(stop, table.time[row]!) < knowsHeading) continue;
    begin ??= value;
    turn = Math.max(turn, Math.abs(Math.atan2(Math.sin(value - begin), Math.cos(value - begin))));
  }
  return begin === null ? null : turn;
}
