import { randomStream } from '@standstill/numerics';
import { describe, expect, test } from 'vitest';
import type { Channel, ChannelTable } from '../channels/channel-table.ts';
import { madeStop } from '../simulate/made-stop.testing.ts';
import { recordedTable } from '../simulate/recorded-table.ts';
import { sensorModel } from '../simulate/sensor-model.ts';
import { findStops } from '../stops/find-stops.ts';
import type { FoundStop } from '../stops/found-stop.ts';

/** A log of each kind, from its own stop. */
const logs = [1, 2, 3, 4].map((seed): ChannelTable => {
  const random = randomStream(seed);
  const made = madeStop(random);
  const sensor = { rate: 10, noise: 0.03, resolution: 0.01, latency: 0.03 };
  const accelerometer = { rate: 100, noise: 0.2, tilt: 0.02, pitch: 0.003 };
  return recordedTable(
    sensorModel(made.trace, seed % 2 === 0 ? { ...sensor, accelerometer } : sensor, random),
    'made',
  );
});

/** Figures that must not change, as numbers. */
function figures(table: ChannelTable): readonly number[] {
  const [stop] = findStops(table, { nominalSpeed: 20 });
  return [
    stop!.applicationDistance,
    stop!.distanceStandardError,
    stop!.entrySpeed,
    stop!.duration,
    stop!.peakDeceleration,
    stop!.meanFullyDevelopedDeceleration ?? NaN,
    stop!.gateDistance ?? NaN,
    ...stop!.trace.speed,
    ...stop!.trace.speedStandardError,
  ];
}

/** The greatest difference between two lists, as a share of the greater of the value and 1. */
function apart(ours: readonly number[], theirs: readonly number[]): number {
  expect(ours).toHaveLength(theirs.length);
  return Math.max(...ours.map((value, i) => Math.abs(value - theirs[i]!) / (1 + Math.abs(value))));
}

const mapped = (table: ChannelTable, change: (channel: Channel) => Channel): ChannelTable => ({
  ...table,
  channels: table.channels.map(change),
});

describe.each(logs.map((table, index) => [index + 1, table] as const))('log %d', (_, table) => {
  test('the clock may start anywhere', () => {
    expect(apart(figures({ ...table, time: table.time.map((t) => t + 512) }), figures(table))).toBeLessThan(
      1e-9,
    );
  });

  test('rows without a reading in between change nothing', () => {
    const spread = (values: Float64Array): Float64Array =>
      Float64Array.from({ length: 2 * values.length }, (__, i) => (i % 2 === 0 ? values[i / 2]! : NaN));
    const time = Float64Array.from({ length: 2 * table.time.length }, (__, i) =>
      i % 2 === 0 ? table.time[i / 2]! : table.time[(i - 1) / 2]! + 0.004,
    );
    const wider = {
      ...table,
      time,
      channels: table.channels.map((one) => ({ ...one, values: spread(one.values) })),
    };
    expect(apart(figures(wider), figures(table))).toBeLessThan(1e-9);
  });

  test('the unit in which a speed was written changes nothing', () => {
    const inOther = mapped(table, (channel) =>
      channel.quantity === 'speed'
        ? { ...channel, values: channel.values.map((v) => (v * 3.6) / 3.6) }
        : channel,
    );
    expect(apart(figures(inOther), figures(table))).toBeLessThan(1e-9);
  });

  test('a channel that tells nothing changes nothing', () => {
    const noise = randomStream(9);
    const values = table.time.map(() => noise.normal());
    const extra = (quantity: Channel['quantity']): Channel => ({
      ...table.channels[0]!,
      name: quantity,
      quantity,
      values,
    });
    const more = ['unknown', 'acceleration-lateral', 'acceleration-forward', 'altitude'] as const;
    expect(
      apart(figures({ ...table, channels: [...table.channels, ...more.map(extra)] }), figures(table)),
    ).toBeLessThan(1e-9);
  });

  test('standard errors are above zero and the speed never below', () => {
    const stop: FoundStop = findStops(table)[0]!;
    expect(stop.trace.speed.every((v) => v >= 0)).toBe(true);
    expect(stop.trace.speedStandardError.every((e) => e > 0 && e < 1)).toBe(true);
    expect(stop.distanceStandardError).toBeGreaterThan(0);
  });
});
