import { describe, expect, test } from 'vitest';
import { madeStop, setOf, sixty } from '../set-of.testing.ts';
import { fadeOfStops } from './fade-of-stops.ts';
import type { FadeOfStops } from './fade.ts';
import { slopeDifference } from './slope-difference.ts';

const options = { nominalSpeed: sixty, definition: 'application' } as const;

function faded(set: Parameters<typeof fadeOfStops>[0]): FadeOfStops {
  const found = fadeOfStops(set, options);
  if (!found.ok) throw new Error(found.code);
  return found;
}

/** Distances with a front temperature at the start of each. */
const hot = (distances: readonly number[], temperatures: readonly number[]) =>
  setOf([], {
    stops: distances.map((distance, index) =>
      madeStop(distance, index + 1, {
        temperatures: [{ channel: 'front', start: temperatures[index]!, end: null }],
      }),
    ),
  });

describe('fadeOfStops', () => {
  test('slope, growth and percent by the line', () => {
    const found = faded(setOf([40, 41, 42.5, 43, 44]));
    // Σ(n−3)² = 10, Σ(n−3)y = −80−41+43+88 = 10; residual squares 0.1 (−.1 −.1 .4 −.1 −.1: .2); s² = 0.2/3
    expect(found.slope.value).toBeCloseTo(1, 12);
    expect(found.slope.high - 1).toBeCloseTo(3.182446 * Math.sqrt(0.2 / 3 / 10), 5);
    expect(found.growth.value).toBeCloseTo(4, 12);
    expect(found.growth.high).toBeCloseTo(4 * found.slope.high, 12);
    expect(found.growthPercent.value).toBeCloseTo((100 * 4) / 40.1, 9);
    expect(found).toMatchObject({ counted: 5, degreesOfFreedom: 3, bends: false });
  });

  test('what does not count keeps its number, its rest and its temperature', () => {
    const gap = { code: 'sample-gap', severity: 'excludes', reason: 'A gap.' } as const;
    const set = hot([40, 90, 42, 43], [100, 200, 300, 400]);
    const stops = set.stops.map((stop, index) => (index === 1 ? { ...stop, flags: [gap] } : stop));
    const found = faded({ ...set, stops });
    expect(found.stops.map(({ number, counted, reason }) => [number, counted, reason])).toEqual([
      [1, true, null],
      [2, false, 'A gap.'],
      [3, true, null],
      [4, true, null],
    ]);
    expect(found.slope.value).toBeCloseTo(1, 12);
    expect(found.temperatures[0]).toMatchObject({ channel: 'front', first: 100, highest: 400 });
    expect(found.temperatures[0]!.slope!.value).toBeCloseTo(100, 9);
    expect(found.temperatures[0]!.distancePer100K!.value).toBeCloseTo(1, 9);
    expect(found.stops.map(({ restedFor }) => restedFor)).toEqual([null, 57, 57, 57]);
  });

  test('the first stop of a second log rested for nobody knows how long', () => {
    const stops = [madeStop(40, 1), madeStop(41, 2), madeStop(42, 1), madeStop(43, 2)];
    expect(faded({ name: 'two logs', stops }).stops.map(({ restedFor }) => restedFor)).toEqual([
      null,
      57,
      null,
      57,
    ]);
  });

  test('temperatures that hardly vary explain nothing', () => {
    expect(faded(hot([40, 41, 42], [100, 103, 101])).temperatures[0]).toMatchObject({
      distancePer100K: null,
    });
    expect(faded(setOf([40, 41, 42])).temperatures).toEqual([]);
  });

  test('a bend shows where distances level off, and not under four stops', () => {
    expect(faded(setOf([40, 44, 46.1, 46.9, 47.1, 47])).bends).toBe(true);
    expect(faded(setOf([40, 44, 46])).curvature).toBeNull();
  });

  test('under three stops that count there is nothing to say', () => {
    expect(fadeOfStops(setOf([40, 41]), options)).toMatchObject({
      ok: false,
      code: 'too-few-to-fade',
      counted: 2,
    });
  });

  test('two slopes against each other', () => {
    const first = faded(setOf([40, 41, 42.5, 43, 44]));
    const second = faded(setOf([40, 40.1, 40.6, 40.4, 40.5]));
    const { difference, degreesOfFreedom } = slopeDifference(first, second);
    expect(difference.value).toBeCloseTo(second.slope.value - first.slope.value, 12);
    expect(degreesOfFreedom).toBeGreaterThan(3);
    expect(degreesOfFreedom).toBeLessThanOrEqual(6);
    expect(difference.high).toBeLessThan(0);
    const back = slopeDifference(second, first).difference;
    expect(back.low).toBeCloseTo(-difference.high, 12);
  });
});
