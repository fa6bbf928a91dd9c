import { describe, expect, it } from 'vitest';
import { exampleRoad, exampleSetUp } from '../set-up/example-set-up.ts';
import { withoutAntilock } from './any-full-stop.testing.ts';
import { usualAntilockControl } from './antilock-control.ts';
import { fullStop } from './full-stop.ts';
import type { FullStopInput } from './full-stop-input.ts';
import { fullStopTrace, type FullStopTrace, type WheelTraces } from './full-stop-trace.ts';

const base: FullStopInput = {
  setUp: exampleSetUp,
  road: exampleRoad,
  foot: { kind: 'ramp', force: 300, rampTime: 0.2 },
  speed: 27.8,
};
const locked: FullStopInput = { ...withoutAntilock(base), lockedWheels: true };
const gentle: FullStopInput = { ...withoutAntilock(base), foot: { kind: 'ramp', force: 60, rampTime: 0.2 } };
const stops = { antilock: base, locked, gentle };

function rises(values: Float64Array): boolean {
  return values.every((value, node) => node === 0 || value >= values[node - 1]!);
}

/** ∫ value dt over the trace by straight lines. */
function integral({ time }: FullStopTrace, value: (node: number) => number): number {
  let sum = 0;
  for (let node = 1; node < time.length; node += 1)
    sum += 0.5 * (value(node - 1) + value(node)) * (time[node]! - time[node - 1]!);
  return sum;
}

function columns(trace: FullStopTrace): readonly Float64Array[] {
  const all: readonly (Float64Array | WheelTraces)[] = Object.values(trace);
  return all.flatMap((column) => (column instanceof Float64Array ? [column] : [...column]));
}

describe.each(Object.entries(stops))('the trace of a full stop (%s)', (_, stop) => {
  const { trace, summary } = fullStopTrace(stop);

  it('has one number in every column at every node, and no NaN', () => {
    for (const column of columns(trace)) {
      expect(column.length).toBe(trace.time.length);
      expect(column.every(Number.isFinite)).toBe(true);
    }
  });

  it('starts at the first touch and ends at rest, time and distance never falling, speed never rising', () => {
    expect(trace.time[0]).toBe(0);
    expect(trace.speed[0]).toBe(27.8);
    expect(rises(trace.time)).toBe(true);
    expect(rises(trace.distance)).toBe(true);
    expect(rises(trace.speed.map((speed) => -speed))).toBe(true);
    expect(Math.abs(trace.speed.at(-1)!)).toBeLessThan(1e-9);
  });

  it('goes with its summary, which is that of the stop without a trace', () => {
    expect(summary).toEqual(fullStop(stop));
    expect(trace.distance.at(-1)).toBe(summary.distance);
    expect(trace.time.at(-1)).toBe(summary.time);
    expect(summary.peakDeceleration).toBeGreaterThanOrEqual(Math.max(...trace.deceleration));
    expect(Math.max(...trace.faceTemperature[0], ...trace.faceTemperature[1])).toBeCloseTo(
      summary.front.peakInterface,
      9,
    );
  });

  it('has its distance in its speed, its speed in its deceleration, and its brake heat in torque and turning', () => {
    expect(integral(trace, (node) => trace.speed[node]!) / summary.distance).toBeCloseTo(1, 4);
    const lost = integral(trace, (node) => trace.deceleration[node]!);
    expect(lost / 27.8).toBeCloseTo(1, 2);
    const heat = integral(trace, (node) =>
      [0, 1, 2, 3].reduce(
        (sum, wheel) => sum + trace.brakeTorque[wheel]![node]! * trace.wheelSpeed[wheel]![node]!,
        0,
      ),
    );
    expect(Math.abs(heat - summary.energies.brakes)).toBeLessThan(2e-3 * summary.energies.kineticIn);
  });

  it('carries the weight on its wheels, and slows by their forces', () => {
    const weight = 1200 * 9.80665;
    trace.time.forEach((_time, node) => {
      const lift = 0.5 * 1.2 * 0.13 * trace.speed[node]! ** 2;
      const carried = trace.load.reduce((sum, load) => sum + load[node]!, 0);
      const force = trace.brakeForce.reduce((sum, given) => sum + given[node]!, 0);
      const air = 0.5 * 1.2 * 0.65 * trace.speed[node]! ** 2;
      expect(carried / (weight - lift)).toBeCloseTo(1, 9);
      const rolling = 0.012 * carried;
      expect(Math.abs(force + air + rolling - 1200 * trace.deceleration[node]!)).toBeLessThan(1e-6 * weight);
    });
  });
});

describe('the looks of a traced full stop', () => {
  it('are one period apart, but for the first, locking and rest', () => {
    const { time } = fullStopTrace(base).trace;
    const spans = [...time].slice(2, -4).map((at, node) => at - time[node + 1]!);
    const whole = spans.filter((span) => Math.abs(span - usualAntilockControl.samplePeriod) < 1e-9);
    expect(whole.length).toBeGreaterThan(0.97 * spans.length);
  });

  it('come as often as the control says', () => {
    const slow = { ...usualAntilockControl, samplePeriod: 0.01 };
    const { time } = fullStopTrace({ ...base, antilockControl: slow }).trace;
    const spans = [...time].slice(2, -4).map((at, node) => at - time[node + 1]!);
    expect(spans.filter((span) => Math.abs(span - 0.01) < 1e-9).length).toBeGreaterThan(0.95 * spans.length);
  });

  it('find the pressure let off and built up again within a period of crossing the threshold', () => {
    const { slip, pressure, time } = fullStopTrace(base).trace;
    const letOff = time.findIndex((_, node) => node > 0 && pressure[0][node]! < pressure[0][node - 1]! - 1e4);
    const deepest = Math.max(...slip[0].slice(Math.max(0, letOff - 4), letOff + 10));
    expect(letOff).toBeGreaterThan(10);
    expect(deepest).toBeGreaterThan(0.1);
    expect(Math.max(...pressure[0].slice(letOff + 20))).toBeGreaterThan(pressure[0][letOff]!);
  });
});
