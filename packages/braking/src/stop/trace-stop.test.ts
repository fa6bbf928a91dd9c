import { describe, expect, it } from 'vitest';
import { exampleRoad, exampleSetUp } from '../set-up/example-set-up.ts';
import { quickStop } from './quick-stop.ts';
import { traceStop } from './trace-stop.ts';

const stop = { setUp: exampleSetUp, road: exampleRoad, foot: { force: 300, rampTime: 0.2 }, speed: 27.8 };
const { trace, summary } = traceStop(stop);
const last = trace.time.length - 1;

function isNeverFalling(values: Float64Array): boolean {
  return values.every((value, index) => index === 0 || value >= values[index - 1]!);
}

describe('a traced stop', () => {
  it('begins at the first touch and ends at rest, at the summary', () => {
    expect([trace.time[0], trace.speed[0], trace.distance[0], trace.frontPressure[0]]).toEqual([
      0, 27.8, 0, 0,
    ]);
    expect(trace.speed[last]).toBe(0);
    expect(trace.distance[last]).toBe(summary.distance);
    expect(trace.time[last]).toBe(summary.time);
  });

  it('never goes back in time or place', () => {
    expect(isNeverFalling(trace.time)).toBe(true);
    expect(isNeverFalling(trace.distance)).toBe(true);
  });

  it('has the greatest deceleration and face temperature of its summary', () => {
    expect(Math.max(...trace.deceleration)).toBe(summary.peakDeceleration);
    expect(Math.max(...trace.frontTemperature)).toBe(summary.front.peakInterface);
  });

  it('is within 0.1 % of the quick stop, and within 2 % of its rise of face temperature', () => {
    const quick = quickStop(stop);
    expect(Math.abs(quick.distance / summary.distance - 1)).toBeLessThan(1e-3);
    const rise = (peak: number) => peak - 100;
    expect(Math.abs(rise(quick.front.peakInterface) / rise(summary.front.peakInterface) - 1)).toBeLessThan(
      0.02,
    );
    expect(Math.abs(rise(quick.rear.peakInterface) / rise(summary.rear.peakInterface) - 1)).toBeLessThan(
      0.02,
    );
  });

  it('shows the pressure that a driver leaves in the line', () => {
    const setUp = { ...exampleSetUp, antilock: { kind: 'none' as const, electronicRearLimit: false } };
    const driven = traceStop({ ...stop, setUp, foot: { force: 500, rampTime: 0.1 } });
    const held = Math.max(...traceStop({ ...stop, foot: { force: 500, rampTime: 0.1 } }).trace.frontPressure);
    expect(Math.max(...driven.trace.frontPressure)).toBeLessThan(0.8 * held);
  });
});
