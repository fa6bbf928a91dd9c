import type { Channel, ChannelTable } from '../channels/channel-table.ts';

/**
 * A speed from the wheels where a log has no other: of two wheels their mean, of more the median, so that one wheel
 * that locks or spins does not carry the others along.
 *
 * @param table - the log
 * @returns the made channel; none where no wheel speed is in the log
 */
export function medianWheelSpeed(table: ChannelTable): readonly Channel[] {
  const wheels = table.channels.filter(({ quantity }) => quantity === 'wheel-speed');
  const [first] = wheels;
  if (first === undefined) return [];
  const values = new Float64Array(table.time.length);
  for (let row = 0; row < values.length; row += 1) {
    const present = wheels.map((wheel) => wheel.values[row]!).filter((value) => !Number.isNaN(value));
    present.sort((a, b) => a - b);
    const middle = (present.length - 1) / 2;
    values[row] =
      present.length === 0 ? NaN : (present[Math.floor(middle)]! + present[Math.ceil(middle)]!) / 2;
  }
  return [{ ...first, name: wheels.length === 1 ? first.name : 'wheels, median', values }];
}
