import type { ChannelTable } from './channel-table.ts';

/**
 * Which segment a row of a table belongs to.
 *
 * @param table - the table
 * @param row - index of the row, from 0
 * @returns index of the segment, from 0
 */
export function segmentOfRow(table: ChannelTable, row: number): number {
  let low = 0;
  let high = table.segmentStarts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (table.segmentStarts[middle]! <= row) low = middle;
    else high = middle - 1;
  }
  return low;
}
