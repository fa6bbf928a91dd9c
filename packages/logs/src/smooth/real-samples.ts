import type { Channel, ChannelTable } from '../channels/channel-table.ts';
import { presentSamples } from './present-samples.ts';

/** What a channel really read, without gaps and repeated rows. */
export interface RealSamples {
  /** s, ascending. */
  readonly time: Float64Array;
  /** SI. */
  readonly values: Float64Array;
}

/**
 * The samples of a channel that were measured: rows with a value, and where most rows only repeat the last one, its changes.
 *
 * @param table - the log
 * @param channel - one of its channels
 * @returns s and values in SI
 */
export function realSamples(table: ChannelTable, channel: Channel): RealSamples {
  const all = presentSamples(table, channel);
  return isHeld(all.values) ? changes(all) : all;
}

function changes({ time, values }: RealSamples): RealSamples {
  const isNew = (_: number, i: number): boolean => i === 0 || values[i] !== values[i - 1];
  return { time: time.filter(isNew), values: values.filter(isNew) };
}

/** Whether more than half of the rows only repeat the one before, judged by 20,000 of them at most. */
function isHeld(values: Float64Array): boolean {
  const stride = Math.max(1, Math.ceil(values.length / 20_000));
  let [repeated, looked] = [0, 0];
  for (let i = 1; i < values.length; i += stride) {
    looked += 1;
    if (values[i] === values[i - 1]) repeated += 1;
  }
  return repeated > 0.6 * looked;
}
