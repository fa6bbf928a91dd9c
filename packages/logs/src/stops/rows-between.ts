import type { ChannelTable } from '../channels/channel-table.ts';

/** The rows of a table from one time to another, both in s: first index and the one after the last. */
export function rowsBetween(
  { time }: ChannelTable,
  from: number,
  to: number,
): { first: number; end: number } {
  return { first: lowerBound(time, from), end: lowerBound(time, to) };
}

function lowerBound(time: Float64Array, moment: number): number {
  let low = 0;
  let high = time.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (time[middle]! < moment) low = middle + 1;
    else high = middle;
  }
  return low;
}
