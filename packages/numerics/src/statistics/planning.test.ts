import { expect, test } from 'vitest';
import { randomStream } from '../sample/random-stream.ts';
import { bootstrapDifference } from './bootstrap-difference.ts';
import { expectedBestOf } from './expected-best-of.ts';
import { runsNeeded } from './runs-needed.ts';
import { tTestPower } from './t-test-power.ts';

test('the best of n is better by luck as its closed forms and draws say', () => {
  expect(expectedBestOf(1)).toBeCloseTo(0, 14);
  expect(expectedBestOf(2)).toBeCloseTo(1 / Math.sqrt(Math.PI), 13);
  expect(expectedBestOf(3)).toBeCloseTo(1.5 / Math.sqrt(Math.PI), 13);
  const stream = randomStream(61, 'best');
  let sum = 0;
  for (let i = 0; i < 40_000; i += 1) sum -= Math.min(...Array.from({ length: 6 }, () => stream.normal()));
  expect(Math.abs(sum / 40_000 - expectedBestOf(6))).toBeLessThan(0.012);
});

test('the runs needed give the power asked for, and one fewer does not', () => {
  for (const difference of [0.4, 0.8, 1.5, 3]) {
    const goal = { difference, standardDeviation: 1 };
    const { runs, exact, power } = runsNeeded(goal, 0.8);
    expect(power).toBe(tTestPower(goal, runs));
    expect(power).toBeGreaterThanOrEqual(0.8 - 1e-9);
    expect(Math.ceil(exact)).toBe(runs);
    if (runs > 2) expect(tTestPower(goal, runs - 1)).toBeLessThan(0.8);
  }
});

test('units do not matter, only the ratio of difference and spread', () => {
  const feet = runsNeeded({ difference: 6, standardDeviation: 4 });
  const meters = runsNeeded({ difference: 6 * 0.3048, standardDeviation: 4 * 0.3048 });
  expect(meters.exact).toBeCloseTo(feet.exact, 8);
});

test('a huge difference needs two runs, a tiny one more than anybody measures', () => {
  expect(runsNeeded({ difference: 1000, standardDeviation: 1 })).toMatchObject({ runs: 2, exact: 2 });
  expect(runsNeeded({ difference: 1e-5, standardDeviation: 1 }).runs).toBe(Infinity);
  expect(() => runsNeeded({ difference: 0, standardDeviation: 1 })).toThrow('difference is 0');
});

test('a bootstrap repeats with its seed, widens with confidence and knows sets without spread', () => {
  const first = [5, 7, 6, 9, 8];
  const second = [3, 4, 6, 2, 5];
  const interval = bootstrapDifference(first, second, { seed: 1 });
  expect(bootstrapDifference(first, second, { seed: 1 })).toEqual(interval);
  const wide = bootstrapDifference(first, second, { seed: 1, confidence: 0.99 });
  expect(wide.low).toBeLessThan(interval.low);
  expect(wide.high).toBeGreaterThan(interval.high);
  expect(bootstrapDifference([5, 5], [3, 3], { seed: 1 })).toEqual({ low: 2, high: 2 });
});
