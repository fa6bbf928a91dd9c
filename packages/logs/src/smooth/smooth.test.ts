import { randomStream } from '@standstill/numerics';
import { describe, expect, test } from 'vitest';
import type { ChannelTable } from '../channels/channel-table.ts';
import { recordedTable } from '../simulate/recorded-table.ts';
import { sensorModel, type Sensor } from '../simulate/sensor-model.ts';
import type { FindOptions } from '../stops/find-options.ts';
import { searchStops, type StopSearch } from '../stops/find-stops.ts';
import type { FoundStop, UsedSensor } from '../stops/found-stop.ts';

const gravity = 9.80665;
const switchTime = 5.9;
const onset = 6;
const ramp = 0.25;
const full = 8;
const entry = 60 * 0.44704;
const time = Array.from({ length: 13_001 }, (_, i) => i / 1000);
const speed = time.map((t) => {
  const since = Math.max(0, t - onset);
  return Math.max(0, entry - full * (since < ramp ? since ** 2 / (2 * ramp) : since - ramp / 2));
});
const brakeApplied = time.map((t) => (t >= switchTime ? 1 : 0));
const covered = speed.reduce((sum, v, i) => (time[i]! >= switchTime ? sum + v / 1000 : sum), 0);

const good: Sensor = {
  rate: 10,
  noise: 0.03,
  resolution: 0.01,
  accelerometer: { rate: 100, noise: 0.2, tilt: 0.04, pitch: 0.003 },
};

function recorded(sensor: Sensor, seed = 1): ChannelTable {
  return recordedTable(sensorModel({ time, speed, brakeApplied }, sensor, randomStream(seed)), 'made');
}

function search(sensor: Sensor, options: FindOptions = {}): StopSearch & { stop: FoundStop } {
  return searched(recorded(sensor), options);
}

function searched(table: ChannelTable, options: FindOptions = {}): StopSearch & { stop: FoundStop } {
  const found = searchStops(table, options);
  expect(found.stops).toHaveLength(1);
  return { ...found, stop: found.stops[0]! };
}

/** m, one standard error without the delay of the accelerometer, which all stops of a logger share. */
const ownError = ({ distanceStandardError, startDelayError, entrySpeed }: FoundStop): number =>
  Math.sqrt(distanceStandardError ** 2 - (startDelayError * entrySpeed) ** 2);

const sensorOf = ({ sensors }: StopSearch, name: string): UsedSensor =>
  sensors.find(({ channel }) => channel === name)!;

/** The table with its accelerometer's values changed. */
function withAcceleration(table: ChannelTable, of: (value: number, row: number) => number): ChannelTable {
  const channels = table.channels.map((channel) =>
    channel.quantity === 'acceleration-forward' ? { ...channel, values: channel.values.map(of) } : channel,
  );
  return { ...table, channels };
}

describe('speed and accelerometer together', () => {
  test('find the distance to a foot or two, at any delay of the speed', () => {
    for (const latency of [-0.1, 0, 0.1]) {
      const { stop } = search({ ...good, latency });
      expect(Math.abs(stop.applicationDistance - covered)).toBeLessThan(0.6);
      expect(1.96 * ownError(stop)).toBeLessThan(0.9);
      expect(stop.startDelayError).toBe(0.05);
    }
  });

  test('without it, 0.1 s between switch and speed is 2.7 m at 60 mph, and the interval says so', () => {
    const { accelerometer: _, ...speedOnly } = good;
    const distanceAt = (latency: number): number =>
      search({ ...speedOnly, latency }).stop.applicationDistance;
    expect(distanceAt(0.1) - distanceAt(0)).toBeCloseTo(0.1 * entry, 0);
    expect(0.1 * entry).toBeCloseTo(2.7, 1);
    const of = (standardError: number): number =>
      search(speedOnly, { speedLatency: { value: 0, standardError } }).stop.distanceStandardError;
    expect(Math.sqrt(of(0.1) ** 2 - of(0) ** 2)).toBeCloseTo(0.1 * entry, 1);
  });

  test('the trace carries its standard error, and the deceleration is the made one', () => {
    const { trace, startTime, endTime } = search(good).stop;
    expect(trace.time[0]).toBeLessThanOrEqual(startTime - 0.98);
    expect(trace.time.at(-1)).toBe(endTime);
    expect(trace.speed.at(-1)).toBe(0);
    const middle = trace.time.findIndex((moment) => moment > onset + 1.5);
    expect(trace.deceleration[middle]).toBeGreaterThan(full - 1);
    expect(trace.deceleration[middle]).toBeLessThan(full + 1);
    const off = trace.time.map((moment, i) => {
      const truth = speed[Math.min(speed.length - 1, Math.round(moment * 1000))]!;
      return i === trace.time.length - 1
        ? 0
        : Math.abs(trace.speed[i]! - truth) / trace.speedStandardError[i]!;
    });
    expect(off.filter((value) => value < 2.5).length / off.length).toBeGreaterThan(0.95);
    expect(Math.max(...trace.speedStandardError)).toBeLessThan(0.3);
  });

  test('a slow speed becomes a dense one', () => {
    const { stop } = search({ ...good, rate: 1 });
    expect(stop.trace.time.length).toBeGreaterThan(300);
    expect(1.96 * ownError(stop)).toBeLessThan(2.5);
    expect(Math.abs(stop.applicationDistance - covered)).toBeLessThan(1.96 * stop.distanceStandardError);
    expect(stop.buildUpTime).toBeCloseTo(0.1 + 0.9 * ramp, 0);
    expect(stop.meanFullyDevelopedDeceleration).toBeCloseTo(full, 0);
  });

  test('the onset comes out without a switch', () => {
    const { stop } = search(good, { startBy: 'deceleration-onset' });
    expect(stop.startTime).toBeGreaterThan(onset - 0.05);
    expect(stop.startTime).toBeLessThan(onset + 0.05);
    expect(stop.startDelayError).toBe(0);
  });
});

describe('what is found out of an accelerometer', () => {
  test('tilt and bias, at standstill', () => {
    const found = sensorOf(search(good), 'acceleration');
    expect(found).toMatchObject({ used: true, noiseOrigin: 'estimated', scale: null });
    expect(found.bias).toBeCloseTo(gravity * Math.sin(0.04), 1);
    expect(found.tilt).toBeCloseTo(0.04, 2);
    expect(found.noise).toBeGreaterThan(0.15);
    expect(found.noise).toBeLessThan(0.25);
    expect(found.note).toContain('standstill');
  });

  test('one that reads braking as positive is turned', () => {
    const found = searched(withAcceleration(recorded(good), (value) => -value));
    expect(sensorOf(found, 'acceleration').note).toContain('sign');
    expect(Math.abs(found.stop.applicationDistance - covered)).toBeLessThan(0.6);
  });

  test.each([
    ['another axis', (_: number, row: number) => Math.sin(row / 7), 'another axis'],
    ['another unit', (value: number) => value / gravity, 'another unit'],
    ['too slow', (value: number, row: number) => (row % 50 === 0 ? value : NaN), 'samples a second'],
  ] as const)('%s is not used, and the note says why', (_, of, words) => {
    const found = searched(withAcceleration(recorded(good), of));
    const sensor = sensorOf(found, 'acceleration');
    expect(sensor).toMatchObject({ used: false, noise: null, bias: null, tilt: null });
    expect(sensor.note).toContain(words);
    const table = recorded(good);
    const channels = table.channels.filter(({ quantity }) => quantity !== 'acceleration-forward');
    const without = searched({ ...table, channels }).stop;
    expect(found.stop.applicationDistance).toBe(without.applicationDistance);
    expect(found.stop.distanceStandardError).toBe(without.distanceStandardError);
  });

  test('a given noise is taken, an impossible one refused', () => {
    const found = search(good, { sensorNoise: { acceleration: 0.4, speed: 0.05 } });
    expect(sensorOf(found, 'acceleration')).toMatchObject({ noise: 0.4, noiseOrigin: 'given' });
    expect(sensorOf(found, 'speed')).toMatchObject({ noise: 0.05, noiseOrigin: 'given' });
    expect(() => search(good, { sensorNoise: { speed: -1 } })).toThrow('noise of the speed');
  });
});

describe('wheels and positions', () => {
  const wheels = [
    { scale: 1.03, slip: 0.005, resolution: 0.02 },
    { scale: 1.03, slip: 0.004 },
  ];

  test('wheels are scaled to the receiver and left out under braking', () => {
    const found = search({ ...good, wheels });
    const wheel = sensorOf(found, 'wheel 1');
    expect(wheel).toMatchObject({ used: true });
    expect(wheel.scale).toBeCloseTo(1.03, 2);
    expect(wheel.note).toContain('under braking wheels slip');
    expect(Math.abs(found.stop.applicationDistance - covered)).toBeLessThan(0.6);
  });

  test('wheels alone read low, and the interval has room for it', () => {
    const table = recorded({ ...good, wheels: [{ slip: 0.004 }, { slip: 0.004 }] });
    const channels = table.channels.filter(({ quantity }) =>
      ['wheel-speed', 'brake-switch'].includes(quantity),
    );
    const { stop } = searched({ ...table, channels });
    expect(stop.distanceStandardError).toBeGreaterThan(0.015 * stop.applicationDistance);
  });

  test('positions are laid onto the line of the stop', () => {
    const position = { noise: 0.3, wander: 1, heading: 2 };
    const found = search({ ...good, position });
    expect(sensorOf(found, 'latitude')).toMatchObject({ used: true, noiseOrigin: 'assumed' });
    expect(Math.abs(found.stop.applicationDistance - covered)).toBeLessThan(0.6);
    const { accelerometer: none, ...speedOnly } = good;
    expect(none).toBeDefined();
    expect(sensorOf(search({ ...speedOnly, position }), 'latitude').used).toBe(false);
  });
});
