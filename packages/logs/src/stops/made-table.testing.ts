import type { Channel, ChannelQuantity, ChannelTable } from '../channels/channel-table.ts';

/** A channel table from made columns; the first is the time in s. */
export function madeTable(
  time: ArrayLike<number>,
  columns: Partial<Record<ChannelQuantity, ArrayLike<number> | readonly ArrayLike<number>[]>>,
  more: Partial<ChannelTable> = {},
): ChannelTable {
  const channels = Object.entries(columns).flatMap(([quantity, values]) => {
    const several = (typeof values[0] === 'number' ? [values] : values) as readonly ArrayLike<number>[];
    return several.map((one, index): Channel => ({
      name: `${quantity} ${index + 1}`,
      quantity: quantity as ChannelQuantity,
      unitAsRead: '',
      unitOrigin: 'header',
      chosenBy: 'guess',
      values: Float64Array.from(one),
    }));
  });
  return {
    time: Float64Array.from(time),
    channels,
    segmentStarts: [0],
    epoch: null,
    headings: null,
    source: { name: 'made', format: 'made', bytes: 0, rows: time.length },
    issues: [],
    ...more,
  };
}

/** Times at a rate in Hz, from 0 to a last one in s. */
export function timesAt(rate: number, last: number): number[] {
  return Array.from({ length: Math.floor(last * rate) + 1 }, (_, i) => i / rate);
}

/** s; the made stops' deceleration grows evenly over this time. */
export const madeRamp = 0.3;

/** m/s: steady at `entry` until `start`, then a ramp to `deceleration`, then to rest. */
export function madeSpeed(entry: number, start: number, deceleration: number): (time: number) => number {
  return (time) => {
    const since = time - start;
    if (since <= 0) return entry;
    const lost = since < madeRamp ? since ** 2 / (2 * madeRamp) : since - madeRamp / 2;
    return Math.max(0, entry - deceleration * lost);
  };
}

/** m from the start of the ramp to rest: v0 tr - a tr²/6 + (v0 - a tr/2)²/(2 a). */
export function madeDistance(entry: number, deceleration: number): number {
  const after = entry - (deceleration * madeRamp) / 2;
  return entry * madeRamp - (deceleration * madeRamp ** 2) / 6 + after ** 2 / (2 * deceleration);
}
