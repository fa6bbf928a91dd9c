import type { Channel, ChannelTable } from '../channels/channel-table.ts';
import type { RecordedTrace } from './sensor-model.ts';

/**
 * A recorded trace as a channel table, so that made stops go the way of measured ones.
 *
 * @param recorded - what a logger wrote
 * @param name - what to call it
 * @returns the table, one segment, no clock
 */
export function recordedTable({ time, speed, brakeApplied }: RecordedTrace, name: string): ChannelTable {
  const speeds = channel('speed', 'speed', speed);
  return {
    time,
    channels: brakeApplied === null ? [speeds] : [speeds, channel('brake', 'brake-switch', brakeApplied)],
    segmentStarts: [0],
    epoch: null,
    headings: null,
    source: { name, format: 'made by the sensor model', bytes: 0, rows: time.length },
    issues: [],
  };
}

function channel(name: string, quantity: Channel['quantity'], values: Float64Array): Channel {
  const unitAsRead = quantity === 'speed' ? 'm/s' : '';
  return { name, quantity, unitAsRead, unitOrigin: 'format', chosenBy: 'format', values };
}
