import { describe, expect, it } from 'vitest';
import { exampleRoad, exampleSetUp } from '../set-up/example-set-up.ts';
import { withoutAntilock } from './any-full-stop.testing.ts';
import { fullStop } from './full-stop.ts';
import { meanFullStop, type MeanFullStopInput } from './mean-full-stop.ts';

const base: MeanFullStopInput = {
  setUp: exampleSetUp,
  road: exampleRoad,
  foot: { kind: 'ramp', force: 300, rampTime: 0.2 },
  speed: 27.8,
  stops: 16,
};

/** Phases other than those of the mean: stops that are as good as them. */
function others(stops: number): number {
  let sum = 0;
  for (let i = 0; i < stops; i += 1) sum += fullStop({ ...base, controlPhase: (i + 0.27) / stops }).distance;
  return sum / stops;
}

describe('the mean of full stops', () => {
  it('is one stop where nothing is left to chance', () => {
    const mean = meanFullStop({ ...withoutAntilock(base), stops: 5 });
    expect(mean.distance).toBe(fullStop(withoutAntilock(base)).distance);
    expect(mean.standardError).toBe(0);
  });

  it('has the mean and the standard error of its stops', () => {
    const golden = (Math.sqrt(5) - 1) / 2;
    const distances = [0, 1, 2, 3].map(
      (i) => fullStop({ ...base, controlPhase: ((i + 0.5) * golden) % 1 }).distance,
    );
    const mean = distances.reduce((sum, distance) => sum + distance, 0) / 4;
    const variance = distances.reduce((sum, distance) => sum + (distance - mean) ** 2, 0) / 3;
    const ours = meanFullStop({ ...base, stops: 4 });
    expect(ours.distance).toBeCloseTo(mean, 9);
    expect(ours.standardError).toBeCloseTo(Math.sqrt(variance / 4), 9);
    expect(ours.standardError).toBeGreaterThan(0);
  });

  it('differs from another mean of the same set-up by no more than three standard errors', () => {
    const mean = meanFullStop(base);
    const error = mean.standardError * Math.SQRT2;
    expect(Math.abs(others(base.stops) - mean.distance)).toBeLessThan(3 * error);
    expect(mean.standardError / mean.distance).toBeLessThan(1e-3);
  });

  it('is Infinity where a stop does not come to rest', () => {
    const road = { ...exampleRoad, grade: -0.2 };
    const mean = meanFullStop({ ...base, road, foot: { kind: 'ramp', force: 1, rampTime: 0 }, stops: 3 });
    expect(mean.distance).toBe(Infinity);
    expect(Object.values(mean)).not.toContain(Number.NaN);
  });

  it('refuses no stops and too many', () => {
    expect(() => meanFullStop({ ...base, stops: 0 })).toThrow(
      'stops of the mean is 0; accepted is 1 to 1000',
    );
    expect(() => meanFullStop({ ...base, stops: 2000 })).toThrow(
      'stops of the mean is 2000; accepted is 1 to 1000',
    );
  });
});
