import type { Channel, ChannelTable } from '../channels/channel-table.ts';
import type { RecordedTrace } from './sensor-model.ts';

/**
 * A recorded trace as a channel table, so that made stops go the way of measured ones.
 *
 * @param recorded - what a logger wrote
 * @param name - what to call it
 * @returns the table, one segment, no clock
 */
export function recordedTable(recorded: RecordedTrace, name: string): ChannelTable {
  const { time, speed, brakeApplied, acceleration, wheelSpeeds, position } = recorded;
  const channels = [
    channel('speed', 'speed', speed),
    brakeApplied && channel('brake', 'brake-switch', brakeApplied),
    acceleration && channel('acceleration', 'acceleration-forward', acceleration),
    ...(wheelSpeeds ?? []).map((values, index) => channel(`wheel ${index + 1}`, 'wheel-speed', values)),
    position && channel('latitude', 'latitude', position.latitude),
    position && channel('longitude', 'longitude', position.longitude),
  ];
  return {
    time,
    channels: channels.filter((one) => one !== undefined && one !== null),
    segmentStarts: [0],
    epoch: null,
    headings: null,
    source: { name, format: 'made by the sensor model', bytes: 0, rows: time.length },
    issues: [],
  };
}

const units: Partial<Record<Channel['quantity'], string>> = {
  speed: 'm/s',
  'wheel-speed': 'm/s',
  'acceleration-forward': 'm/s²',
  latitude: 'rad',
  longitude: 'rad',
};

function channel(name: string, quantity: Channel['quantity'], values: Float64Array): Channel {
  return {
    name,
    quantity,
    unitAsRead: units[quantity] ?? '',
    unitOrigin: 'format',
    chosenBy: 'format',
    values,
  };
}
