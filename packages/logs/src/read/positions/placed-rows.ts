import type { ChannelTable } from '../../channels/channel-table.ts';

/** The rows of a log that tell a position. */
export interface Places {
  readonly row: Uint32Array;
  /** s. */
  readonly time: Float64Array;
  /** rad. */
  readonly latitude: Float64Array;
  readonly longitude: Float64Array;
  /** Segment of the log that the row is in. */
  readonly segment: Uint32Array;
}

/**
 * Picks the rows in which a log tells both latitude and longitude.
 *
 * @param table - the log
 * @returns the places in order; null where the log has no such channels
 */
export function placedRows(table: ChannelTable): Places | null {
  const latitudes = table.channels.find(({ quantity }) => quantity === 'latitude')?.values;
  const longitudes = table.channels.find(({ quantity }) => quantity === 'longitude')?.values;
  if (latitudes === undefined || longitudes === undefined) return null;
  const rows = Uint32Array.from(table.time.keys()).filter(
    (row) => !Number.isNaN(latitudes[row]!) && !Number.isNaN(longitudes[row]!),
  );
  const segment = new Uint32Array(rows.length);
  let current = 0;
  for (let i = 0; i < rows.length; i += 1) {
    while ((table.segmentStarts[current + 1] ?? Infinity) <= rows[i]!) current += 1;
    segment[i] = current;
  }
  return {
    row: rows,
    time: Float64Array.from(rows, (row) => table.time[row]!),
    latitude: Float64Array.from(rows, (row) => latitudes[row]!),
    longitude: Float64Array.from(rows, (row) => longitudes[row]!),
    segment,
  };
}
