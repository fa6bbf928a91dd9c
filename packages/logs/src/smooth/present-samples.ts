import type { Channel, ChannelTable } from '../channels/channel-table.ts';
import type { RealSamples } from './real-samples.ts';

/**
 * The rows of a channel that hold a value, repeated ones included.
 *
 * @param table - the log
 * @param channel - one of its channels
 * @returns s and values in SI
 */
export function presentSamples({ time }: ChannelTable, { values }: Channel): RealSamples {
  const times = new Float64Array(values.length);
  const there = new Float64Array(values.length);
  let count = 0;
  for (let row = 0; row < values.length; row += 1) {
    if (Number.isNaN(values[row])) continue;
    times[count] = time[row]!;
    there[count] = values[row]!;
    count += 1;
  }
  return { time: times.subarray(0, count), values: there.subarray(0, count) };
}
