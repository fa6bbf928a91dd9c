import { permutationTest as oracle } from 'simple-statistics';
import { expect, test } from 'vitest';
import { randomStream } from '../sample/random-stream.ts';
import { arrangements } from './arrangements.ts';
import { permutationTest } from './permutation-test.ts';

const plan = { seed: 1 };

/** All ways at once, written another way: every bit pattern with the right number of ones. */
function byBitPatterns(first: readonly number[], second: readonly number[]): number {
  const all = [...first, ...second];
  const total = all.reduce((sum, value) => sum + value, 0);
  const gap = (sum: number): number => Math.abs(sum / first.length - (total - sum) / second.length);
  const observed = gap(first.reduce((sum, value) => sum + value, 0));
  let hits = 0;
  let ways = 0;
  for (let bits = 0; bits < 2 ** all.length; bits += 1) {
    const picked = all.filter((_, i) => (bits >> i) & 1);
    if (picked.length !== first.length) continue;
    ways += 1;
    if (gap(picked.reduce((sum, value) => sum + value, 0)) >= observed - 1e-9) hits += 1;
  }
  return hits / ways;
}

test('small sets by hand', () => {
  expect(permutationTest([1, 2, 3], [7, 8, 9], plan)).toEqual({
    difference: -6,
    p: 0.1,
    exact: true,
    tried: 20,
  });
  expect(permutationTest([1], [2], plan).p).toBe(1);
  expect(permutationTest([4, 4], [4, 4, 4], plan).p).toBe(1);
});

test('all arrangements, against another way of going through them', () => {
  const stream = randomStream(41, 'sets');
  for (let round = 0; round < 40; round += 1) {
    const set = (count: number): number[] =>
      Array.from({ length: count }, () => Math.round(stream.normal() * 30) / 10);
    const first = set(1 + stream.below(6));
    const second = set(1 + stream.below(6));
    expect(permutationTest(first, second, plan).p).toBeCloseTo(byBitPatterns(first, second), 12);
  }
});

test('ties count although rounding shifts them, also for large values close together', () => {
  const first = [0.1, 0.2, 0.3].map((value) => 1e6 + value);
  const second = [0.3, 0.2, 0.1].map((value) => 1e6 + value);
  expect(permutationTest(first, second, plan).p).toBe(1);
  expect(permutationTest([0.1, 0.7], [0.3, 0.5], plan).p).toBe(1);
});

test('where there are too many arrangements, drawn orders come near the exact share, and repeat with the seed', () => {
  const first = [21, 24, 23, 25, 22, 26, 20, 24];
  const second = [20, 21, 19, 22, 23, 18, 21, 22];
  const exact = permutationTest(first, second, plan);
  const drawn = permutationTest(first, second, { seed: 5, mostExact: 100, draws: 50_000 });
  expect(exact).toMatchObject({ exact: true, tried: 12_870 });
  expect(drawn).toMatchObject({ exact: false, tried: 50_000 });
  expect(Math.abs(drawn.p - exact.p)).toBeLessThan(4 * Math.sqrt(exact.p / 50_000));
  expect(permutationTest(first, second, { seed: 5, mostExact: 100, draws: 50_000 })).toEqual(drawn);
  const source = randomStream(6, 'oracle');
  const elsewhere = oracle(first, second, 'two_side', 20_000, source.uniform);
  expect(Math.abs(elsewhere - exact.p)).toBeLessThan(0.01);
});

test('a drawn p is never zero', () => {
  const far = Array.from({ length: 15 }, (_, i) => i);
  expect(
    permutationTest(
      far,
      far.map((value) => value + 1000),
      plan,
    ).p,
  ).toBeCloseTo(1 / 20_001, 12);
});

test('arrangements are counted right', () => {
  expect(arrangements(10, 5)).toBe(252);
  expect(arrangements(20, 10)).toBe(184_756);
  expect(arrangements(7, 0)).toBe(1);
  expect(arrangements(7, 7)).toBe(1);
  expect(arrangements(50, 25)).toBe(126_410_606_437_752);
});
