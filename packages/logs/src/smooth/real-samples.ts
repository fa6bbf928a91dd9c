import type { Channel, ChannelTable } from '../channels/channel-table.ts';
import { heldPeriod } from '../stops/held-period.ts';

/** What a channel really read, without gaps and repeated rows. */
export interface RealSamples {
  /** s, ascending. */
  readonly time: Float64Array;
  /** SI. */
  readonly values: Float64Array;
}

/**
 * The samples of a channel that were measured: rows with a value, and where rows only repeat the last one, its changes.
 *
 * @param table - the log
 * @param channel - one of its channels
 * @returns s and values in SI
 */
export function realSamples({ time }: ChannelTable, { values }: Channel): RealSamples {
  const times = new Float64Array(values.length);
  const there = new Float64Array(values.length);
  let count = 0;
  for (let row = 0; row < values.length; row += 1) {
    if (Number.isNaN(values[row])) continue;
    times[count] = time[row]!;
    there[count] = values[row]!;
    count += 1;
  }
  const all = { time: times.subarray(0, count), values: there.subarray(0, count) };
  return heldPeriod(all.time, all.values, 0) === null ? all : changes(all);
}

function changes({ time, values }: RealSamples): RealSamples {
  const isNew = (_: number, i: number): boolean => i === 0 || values[i] !== values[i - 1];
  return { time: time.filter(isNew), values: values.filter(isNew) };
}
