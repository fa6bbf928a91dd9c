import { mean as oracleMean, quantile as oracleQuantile, sampleStandardDeviation } from 'simple-statistics';
import { expect, test } from 'vitest';
import { randomStream } from '../sample/random-stream.ts';
import { mean } from './mean.ts';
import { quantile } from './quantile.ts';
import { sortedQuantile } from './sorted-quantile.ts';
import { standardDeviation } from './standard-deviation.ts';
import { summarize } from './summarize.ts';

const stream = randomStream(21, 'moments');
const values = Array.from({ length: 57 }, () => 120 + 5 * stream.normal());

test('mean, spread and quantiles are what a general-purpose library says', () => {
  expect(mean(values)).toBeCloseTo(oracleMean(values), 11);
  expect(standardDeviation(values)).toBeCloseTo(sampleStandardDeviation(values), 11);
  expect(summarize(values)).toEqual({
    count: 57,
    mean: mean(values),
    standardDeviation: standardDeviation(values),
  });
  for (const even of [values, values.slice(1)])
    expect(quantile(even, 0.5)).toBeCloseTo(oracleQuantile(even, 0.5), 11);
});

test('large values close together keep their spread, as far as doubles hold the values at all', () => {
  const small = values.map((value) => Math.round(value));
  const large = small.map((value) => value + 1e9);
  expect(standardDeviation(large)).toBeCloseTo(standardDeviation(small), 12);
  expect(mean(large)).toBeCloseTo(1e9 + mean(small), 6);
});

test('quantiles of type 7 by hand', () => {
  expect(quantile([8, 3, 4], 0)).toBe(3);
  expect(quantile([8, 3, 4], 0.25)).toBe(3.5);
  expect(quantile([8, 3, 4], 1)).toBe(8);
  expect(quantile([5], 0.3)).toBe(5);
  expect(sortedQuantile(Float64Array.of(1, 2, 3, 4), 0.9)).toBeCloseTo(3.7, 14);
});

test('the input is left as it was', () => {
  const input = [8, 3, 4];
  quantile(input, 0.5);
  expect(input).toEqual([8, 3, 4]);
});

test('nothing, one value and gaps are refused', () => {
  expect(() => mean([])).toThrow('number of values is 0');
  expect(() => mean([1, Number.NaN])).toThrow('value is NaN');
  expect(() => standardDeviation([1])).toThrow('number of values is 1');
  expect(() => quantile([], 0.5)).toThrow('number of values is 0');
  expect(() => quantile([1, Number.NaN, 3], 0.5)).toThrow('value is NaN');
  expect(() => quantile([1, 2], -0.1)).toThrow('probability is -0.1');
});
