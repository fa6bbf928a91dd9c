import { randomStream } from '@standstill/numerics';
import { describe, expect, test } from 'vitest';
import { recordedTable } from './recorded-table.ts';
import { sensorModel, type RecordedTrace, type Sensor } from './sensor-model.ts';

const gravity = 9.80665;
const time = Array.from({ length: 8001 }, (_, i) => i / 1000);
/** m/s: 25 for 3 s, 5 m/s² down to rest at 8 s, standing from there. */
const speed = time.map((t) => Math.max(0, 25 - 5 * Math.max(0, t - 3)));
const record = (sensor: Sensor): RecordedTrace => sensorModel({ time, speed }, sensor, randomStream(3));
const near = ({ time: rows }: RecordedTrace, moment: number): number =>
  rows.findIndex((row) => row >= moment);

describe('the accelerometer', () => {
  test('sets the pace of the rows; the speed has gaps between its samples', () => {
    const recorded = record({ rate: 10, accelerometer: { rate: 100 } });
    expect(recorded.time[1]! - recorded.time[0]!).toBeCloseTo(0.01, 9);
    const sampled = Array.from(recorded.speed.entries()).filter(([, value]) => !Number.isNaN(value));
    expect(sampled.slice(1).every(([row], i) => row - sampled[i]![0] === 10)).toBe(true);
    expect(recorded.acceleration![near(recorded, 5)]).toBeCloseTo(-5, 9);
    expect(() => record({ rate: 10, accelerometer: { rate: 1 } })).toThrow('rate of the rows');
  });

  test('reads its bias, the gravity of its tilt and, once settled, of the pitch', () => {
    const recorded = record({
      rate: 100,
      accelerometer: { rate: 100, tilt: 0.05, bias: 0.1, pitch: 0.004 },
    });
    const offset = 0.1 + gravity * Math.sin(0.05);
    expect(recorded.acceleration![near(recorded, 2)]).toBeCloseTo(offset, 9);
    expect(recorded.acceleration![near(recorded, 6.5)]).toBeCloseTo(offset - 5 - gravity * 0.02, 2);
    const swing = recorded.acceleration!.slice(near(recorded, 3), near(recorded, 4));
    expect(Math.min(...swing)).toBeLessThan(offset - 5 - 1.1 * gravity * 0.02);
  });

  test('noise and steps', () => {
    const noisy = record({ rate: 100, accelerometer: { rate: 100, noise: 0.5, resolution: 0.2 } });
    const before = noisy.acceleration!.slice(0, near(noisy, 2.9));
    const spread = Math.sqrt(before.reduce((sum, value) => sum + value * value, 0) / before.length);
    expect(spread).toBeGreaterThan(0.42);
    expect(spread).toBeLessThan(0.6);
    expect(before.every((value) => Math.abs(value * 5 - Math.round(value * 5)) < 1e-9)).toBe(true);
  });
});

describe('wheels and position', () => {
  test('wheels have a scale, and slip only while the car slows', () => {
    const { wheelSpeeds, ...recorded } = record({ rate: 50, wheels: [{ scale: 1.02, slip: 0.01 }, {}] });
    expect(wheelSpeeds![0]![near(recorded, 2)]).toBeCloseTo(25 / 1.02, 9);
    const row = near(recorded, 5);
    expect(wheelSpeeds![0]![row]! / wheelSpeeds![1]![row]!).toBeCloseTo(0.95 / 1.02, 9);
    const [stepped] = record({ rate: 50, wheels: [{ resolution: 0.3, noise: 0.1 }] }).wheelSpeeds!;
    expect(stepped!.every((v) => Math.abs(v / 0.3 - Math.round(v / 0.3)) < 1e-9)).toBe(true);
    expect(new Set(stepped).size).toBeGreaterThan(20);
  });

  test('positions lie along the road, as far apart as the car went', () => {
    const recorded = record({ rate: 10, position: { heading: 0.7, latency: 0.1 } });
    const { latitude, longitude } = recorded.position!;
    const [from, to] = [near(recorded, 1), near(recorded, 2)];
    const north = (latitude[to]! - latitude[from]!) * 6_371_000;
    const east = (longitude[to]! - longitude[from]!) * 6_371_000 * Math.cos(latitude[from]!);
    expect(Math.hypot(north, east)).toBeCloseTo(25, 3);
    expect(Math.atan2(east, north)).toBeCloseTo(0.7, 4);
    const wandering = record({ rate: 10, position: { noise: 0.5, wander: 2, wanderTime: 5 } }).position!;
    expect(wandering.latitude).not.toEqual(latitude);
  });

  test('all of them become channels', () => {
    const recorded = record({ rate: 10, accelerometer: { rate: 50 }, wheels: [{}, {}], position: {} });
    expect(recordedTable(recorded, 'made').channels.map(({ name, quantity }) => [name, quantity])).toEqual([
      ['speed', 'speed'],
      ['acceleration', 'acceleration-forward'],
      ['wheel 1', 'wheel-speed'],
      ['wheel 2', 'wheel-speed'],
      ['latitude', 'latitude'],
      ['longitude', 'longitude'],
    ]);
    expect(recorded.position!.latitude.filter((value) => Number.isNaN(value))).not.toHaveLength(0);
  });
});
