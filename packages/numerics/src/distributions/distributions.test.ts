import { expect, test } from 'vitest';
import { randomStream } from '../sample/random-stream.ts';
import { noncentralTCdf } from './noncentral-t-cdf.ts';
import { normalCdf } from './normal-cdf.ts';
import { normalQuantile } from './normal-quantile.ts';
import { tCdf } from './t-cdf.ts';
import { tQuantile } from './t-quantile.ts';

const points = [-40, -5, -1.5, -0.1, 0, 1e-6, 0.7, 2, 12];

test('t with one and two degrees of freedom follows its closed forms', () => {
  for (const t of points) {
    expect(tCdf(t, 1)).toBeCloseTo(0.5 + Math.atan(t) / Math.PI, 10);
    expect(tCdf(t, 2)).toBeCloseTo(0.5 + t / (2 * Math.sqrt(2 + t * t)), 10);
  }
});

test('quantiles undo probabilities', () => {
  for (const probability of [1e-9, 0.001, 0.025, 0.3, 0.5, 0.9, 0.975, 0.999999]) {
    for (const nu of [1, 2.5, 9, 137, 1e6]) {
      expect(Math.abs(tCdf(tQuantile(probability, nu), nu) / probability - 1)).toBeLessThan(1e-10);
    }
  }
  for (const probability of [1e-300, 1e-17, 1e-9, 1e-5, 0.000999, 0.001001, 0.3, 0.5, 0.975, 0.999999]) {
    expect(Math.abs(normalCdf(normalQuantile(probability)) / probability - 1)).toBeLessThan(1e-11);
  }
  expect(normalQuantile(0)).toBe(-Infinity);
  expect(tQuantile(1, 5)).toBe(Infinity);
});

test('the normal probability is smooth where its two ways of computing meet, and right in the far tail', () => {
  for (const z of [-4, 4]) expect(normalCdf(z - 1e-9)).toBeCloseTo(normalCdf(z + 1e-9), 11);
  expect(normalCdf(-10) / 7.61985302416053e-24).toBeCloseTo(1, 12);
  expect(normalCdf(-4) / 3.167124183311992e-5).toBeCloseTo(1, 13);
  expect(normalCdf(1)).toBeCloseTo(0.841344746068543, 14);
  expect(normalCdf(-100)).toBe(0);
  expect(normalCdf(Infinity)).toBe(1);
  expect(normalCdf(Number.NaN)).toBeNaN();
});

test('many degrees of freedom make t normal', () => {
  for (const t of [-3, -1, 0.5, 2]) expect(tCdf(t, 1e9)).toBeCloseTo(normalCdf(t), 8);
});

test('noncentral t without a shift is t, and with one it mirrors', () => {
  for (const nu of [0.5, 1, 4, 38, 1000]) {
    for (const t of points) {
      expect(noncentralTCdf(t, nu, 0)).toBeCloseTo(tCdf(t, nu), 10);
      expect(noncentralTCdf(t, nu, 1.3)).toBeCloseTo(1 - noncentralTCdf(-t, nu, -1.3), 10);
    }
  }
});

test('noncentral t agrees with draws of what it is', () => {
  const stream = randomStream(11, 'noncentral');
  const draws = 100_000;
  let below = 0;
  for (let i = 0; i < draws; i += 1) {
    const squares = stream.normal() ** 2 + stream.normal() ** 2 + stream.normal() ** 2;
    if ((stream.normal() + 1.5) / Math.sqrt(squares / 3) <= 2) below += 1;
  }
  const expected = noncentralTCdf(2, 3, 1.5);
  expect(Math.abs(below / draws - expected)).toBeLessThan(
    3.3 * Math.sqrt((expected * (1 - expected)) / draws),
  );
});

test('degrees of freedom and probabilities that cannot be are refused', () => {
  expect(() => tCdf(1, 0)).toThrow('degrees of freedom is 0');
  expect(() => tCdf(1, Infinity)).toThrow('degrees of freedom is Infinity');
  expect(() => tQuantile(1.5, 5)).toThrow('probability is 1.5');
  expect(() => noncentralTCdf(1, Number.NaN, 0)).toThrow('degrees of freedom is NaN');
});
