import type { Channel, ChannelTable } from '../channels/channel-table.ts';
import { rowsBetween } from '../stops/rows-between.ts';

/** Positions of a stop as distances along its own straight line. */
export interface LinePositions {
  /** s. */
  readonly time: Float64Array;
  /** m, from the first position in the direction of travel. */
  readonly values: Float64Array;
}

/** m, mean radius of the earth; over a stop its shape does not matter. Common practice. */
const earth = 6_371_000;
/** m off the line beyond which a stop is no straight one, or its positions jump. Common practice. */
const farthestOff = 6;
/** m; a shorter way gives no direction. */
const shortest = 8;

/**
 * Lays the positions around a stop onto the straight line from the first to the last of them.
 *
 * @param table - the log
 * @param latitude - rad
 * @param longitude - rad
 * @param window - s, from and to
 * @returns m along the line; null where there are too few or they lie on no straight line
 */
export function linePositions(
  table: ChannelTable,
  latitude: Channel,
  longitude: Channel,
  window: { readonly from: number; readonly to: number },
): LinePositions | null {
  const { first, end } = rowsBetween(table, window.from, window.to);
  const rows: number[] = [];
  for (let row = first; row < end; row += 1)
    if (!Number.isNaN(latitude.values[row]! + longitude.values[row]!)) rows.push(row);
  if (rows.length < 4) return null;
  const [origin, last] = [rows[0]!, rows[rows.length - 1]!];
  const narrowing = Math.cos(latitude.values[origin]!);
  const north = (row: number): number => earth * (latitude.values[row]! - latitude.values[origin]!);
  const east = (row: number): number => {
    const turn = longitude.values[row]! - longitude.values[origin]!;
    return earth * narrowing * Math.atan2(Math.sin(turn), Math.cos(turn));
  };
  const way = Math.hypot(north(last), east(last));
  if (!(way > shortest)) return null;
  const [alongNorth, alongEast] = [north(last) / way, east(last) / way];
  const isOff = (row: number): boolean =>
    Math.abs(alongNorth * east(row) - alongEast * north(row)) > farthestOff;
  if (rows.some(isOff)) return null;
  return {
    time: Float64Array.from(rows, (row) => table.time[row]!),
    values: Float64Array.from(rows, (row) => alongNorth * north(row) + alongEast * east(row)),
  };
}
