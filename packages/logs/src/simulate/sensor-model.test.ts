import { randomStream } from '@standstill/numerics';
import { describe, expect, test } from 'vitest';
import { sensorModel, type Sensor } from './sensor-model.ts';

const time = Array.from({ length: 20_001 }, (_, i) => i / 1000);
const steady = { time, speed: time.map(() => 20) };
const ramp = { time, speed: time.map((t) => 5 + t), brakeApplied: time.map((t) => (t > 10 ? 1 : 0)) };
const record = (trace: typeof steady, sensor: Sensor, seed = 1): ReturnType<typeof sensorModel> =>
  sensorModel(trace, sensor, randomStream(seed));

describe('sensorModel', () => {
  test('a perfect sensor gives back the trace at its rate', () => {
    const { time: t, speed, brakeApplied } = record(ramp, { rate: 10 });
    expect(t.length).toBeGreaterThanOrEqual(200);
    speed.forEach((v, i) => expect(v).toBeCloseTo(5 + t[i]!, 9));
    expect(brakeApplied!.reduce((sum, on) => sum + on, 0)).toBe(
      t.filter((moment) => moment > 10.0005).length,
    );
  });

  test('latency and a filter make it late', () => {
    const late = record(ramp, { rate: 10, latency: 0.3 });
    expect(late.speed[100]).toBeCloseTo(5 + late.time[100]! - 0.3, 9);
    const filtered = record(ramp, { rate: 10, filterTime: 0.5 });
    expect(filtered.speed[100]).toBeCloseTo(5 + filtered.time[100]! - 0.5, 2);
  });

  test('noise has the stated spread, together or apart', () => {
    const errors = Array.from(
      { length: 30 },
      (_, seed) => record(steady, { rate: 100, noise: 0.1 }, seed).speed,
    ).flatMap((speed) => Array.from(speed, (v) => v - 20));
    const spread = Math.sqrt(errors.reduce((sum, e) => sum + e * e, 0) / errors.length);
    expect(spread).toBeCloseTo(0.1, 2);
    const together = record(steady, { rate: 100, correlatedNoise: 0.1, correlationTime: 1 });
    const jumps = Array.from(together.speed.slice(1), (v, i) => v - together.speed[i]!);
    expect(Math.sqrt(jumps.reduce((sum, e) => sum + e * e, 0) / jumps.length)).toBeCloseTo(
      0.1 * Math.sqrt(0.02),
      2,
    );
  });

  test('steps and dropouts', () => {
    const { speed } = record(ramp, { rate: 20, resolution: 0.25, dropoutChance: 0.05, dropoutLength: 3 });
    const written = speed.filter((v) => !Number.isNaN(v));
    expect(written.length).toBeLessThan(speed.length);
    expect(written.every((v) => Math.abs(v * 4 - Math.round(v * 4)) < 1e-9)).toBe(true);
  });

  test('the same stream gives the same record', () => {
    const sensor = { rate: 10, noise: 0.1, dropoutChance: 0.1 };
    expect(record(ramp, sensor, 5)).toEqual(record(ramp, sensor, 5));
    expect(record(ramp, sensor, 5)).not.toEqual(record(ramp, sensor, 6));
  });

  test('an impossible sensor or trace is refused', () => {
    expect(() => record(ramp, { rate: 0 })).toThrow('sample rate');
    expect(() => record({ time: [0, 0], speed: [1, 1] }, { rate: 1 })).toThrow('step of time');
    expect(() => record({ time: [0, 1], speed: [1] }, { rate: 1 })).toThrow('speeds of the trace');
  });
});
