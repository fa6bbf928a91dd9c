import type { Channel, ChannelTable } from '../channels/channel-table.ts';
import type { StopTemperature } from './found-stop.ts';
import { rowsBetween } from './rows-between.ts';

/** s; a rotor warms within a stop, so that an older value does not tell how warm it was when the stop began. */
const fresh = 2;

/**
 * What the temperature channels of a log read at a stop: the last value within 2 s before its start, and the one nearest
 * to rest within 2 s. A channel that read nothing before the start is left out.
 *
 * @param table - the log
 * @param start - s on the table's time base
 * @param end - s, rest
 * @returns °C by channel
 */
export function temperaturesAt(table: ChannelTable, start: number, end: number): readonly StopTemperature[] {
  return table.channels
    .filter(({ quantity }) => quantity === 'temperature')
    .flatMap((channel) => {
      const before = nearest(table, channel, start - fresh, start, start);
      if (before === null) return [];
      return [
        {
          channel: channel.name,
          start: before,
          end: nearest(table, channel, Math.max(start, end - fresh), end + fresh, end),
        },
      ];
    });
}

/** The value nearest to a moment between two times in s, both of which count; null where there is none. */
function nearest(
  table: ChannelTable,
  { values }: Channel,
  from: number,
  to: number,
  moment: number,
): number | null {
  const { time } = table;
  const { first, end } = rowsBetween(table, from, to + Number.EPSILON * Math.abs(to));
  let found: number | null = null;
  let distance = Infinity;
  for (let row = first; row < end; row += 1) {
    const away = Math.abs(time[row]! - moment);
    if (Number.isNaN(values[row]) || away > distance) continue;
    found = values[row]!;
    distance = away;
  }
  return found;
}
