import type { ChannelQuantity, ChannelTable } from '../channels/channel-table.ts';
import { downwardCrossing } from './downward-crossing.ts';
import { rowsBetween } from './rows-between.ts';
import type { SpeedRun } from './speed-run.ts';

/**
 * The mean of a channel over the fully developed part of a stop, from 0.8 to 0.1 of the entry speed, as the regulation
 * takes the deceleration.
 *
 * @param table - the log
 * @param quantity - of which channel; the first that has values there
 * @param stop - s on the log's base and m/s, from the start to rest; the first speed is the entry speed
 * @returns mean in the channel's unit; null where it is not recorded there
 * Source: [un-r13]
 */
export function developedMean(table: ChannelTable, quantity: ChannelQuantity, stop: SpeedRun): number | null {
  const begin = downwardCrossing(stop, 0.8 * stop.speed[0]!);
  const end = downwardCrossing(stop, 0.1 * stop.speed[0]!);
  if (begin === null || end === null) return null;
  const rows = rowsBetween(table, begin.time, end.time);
  for (const channel of table.channels) {
    if (channel.quantity !== quantity) continue;
    const there = channel.values.subarray(rows.first, rows.end).filter((value) => !Number.isNaN(value));
    if (there.length > 0) return there.reduce((sum, value) => sum + value, 0) / there.length;
  }
  return null;
}
