import { tTest as oracleT, tTestTwoSample } from 'simple-statistics';
import { expect, test } from 'vitest';
import { meanInterval } from './mean-interval.ts';
import { pairedT } from './paired-t.ts';
import { pooledT } from './pooled-t.ts';
import { summarize } from './summarize.ts';
import { welch } from './welch.ts';

const before = [121.4, 119.8, 124.0, 122.2, 120.9, 123.1];
const after = [118.2, 119.5, 116.9, 118.8, 120.1, 117.7];

test('pooled and paired t are what a general-purpose library says', () => {
  expect(pooledT(summarize(before), summarize(after)).t).toBeCloseTo(tTestTwoSample(before, after)!, 12);
  const differences = before.map((value, i) => value - after[i]!);
  // That library divides the squares by n in its one-sample t; the sample's own spread divides by n - 1.
  expect(pairedT(before, after).t).toBeCloseTo(oracleT(differences, 0) * Math.sqrt(5 / 6), 12);
});

test('equal counts and spreads make Welch and pooled alike', () => {
  const one = { count: 8, mean: 10, standardDeviation: 2 };
  const other = { count: 8, mean: 7, standardDeviation: 2 };
  expect(welch(one, other).t).toBeCloseTo(pooledT(one, other).t, 14);
  expect(welch(one, other).degreesOfFreedom).toBeCloseTo(14, 12);
});

test('the interval leaves out zero exactly when p is under what the confidence leaves', () => {
  const first = summarize(before);
  const second = summarize(after);
  const { p } = welch(first, second);
  expect(welch(first, second, 1 - p * 1.001).low).toBeGreaterThan(0);
  expect(welch(first, second, 1 - p * 0.999).low).toBeLessThan(0);
});

test('changing sides changes the sign and nothing else', () => {
  const there = welch(summarize(before), summarize(after));
  const back = welch(summarize(after), summarize(before));
  expect(back.difference).toBe(-there.difference);
  expect(back.p).toBe(there.p);
  expect(back.low).toBeCloseTo(-there.high, 12);
});

test('sets that do not spread', () => {
  const still = summarize([5, 5, 5]);
  expect(welch(still, still).p).toBeNaN();
  expect(welch(still, summarize([6, 6, 6]))).toMatchObject({
    difference: -1,
    t: -Infinity,
    p: 0,
    low: -1,
    high: -1,
  });
  expect(welch(still, summarize([1, 2, 3])).degreesOfFreedom).toBe(2);
});

test('too few values and a confidence of one are refused', () => {
  const one = { count: 1, mean: 5, standardDeviation: 0 };
  const two = summarize([1, 2]);
  expect(() => welch(one, two)).toThrow('number of values is 1');
  expect(() => pooledT(two, one)).toThrow('number of values is 1');
  expect(() => meanInterval(one)).toThrow('number of values is 1');
  expect(() => pairedT([1, 2, 3], [1, 2])).toThrow('number of second values is 2');
  expect(() => welch(two, two, 1)).toThrow('confidence is 1');
});
