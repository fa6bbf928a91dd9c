import { expect, test } from 'vitest';
import { centeredDiscrepancy } from './centered-discrepancy.ts';
import { latinHypercube } from './latin-hypercube.ts';
import { randomStream } from './random-stream.ts';
import { scrambledDirections } from './scrambled-directions.ts';
import { sobolColumn } from './sobol-column.ts';
import { sobolDimensions } from './sobol-directions.ts';
import { sobolSequence } from './sobol-sequence.ts';

function names(count: number): string[] {
  return Array.from({ length: count }, (_, index) => `input ${index}`);
}

test('the plain sequence is the one that a general-purpose package draws, in its last dimensions too', () => {
  // Points 500 and 999 of 160 dimensions, as SciPy 1.17.1 draws them without scrambling.
  const points = sobolSequence({ draws: 1000, keys: names(160), seed: 0, scramble: false });
  const at = (row: number, from: number, count: number): number[] => [
    ...points.subarray(row * 160 + from, row * 160 + from + count),
  ];
  expect(at(999, 0, 5)).toEqual([0.1572265625, 0.9091796875, 0.0810546875, 0.9892578125, 0.9677734375]);
  expect(at(999, 155, 5)).toEqual([0.9072265625, 0.0498046875, 0.9482421875, 0.6865234375, 0.9580078125]);
  expect(at(500, 100, 4)).toEqual([0.599609375, 0.498046875, 0.701171875, 0.986328125]);
});

test('the seed and the name decide a scrambled dimension, the company it keeps does not', () => {
  const draw = (keys: string[], seed: number): number[] => [...sobolSequence({ draws: 8, keys, seed })];
  expect(draw(['grip'], 3)).toEqual(draw(['grip'], 3));
  expect(draw(['grip'], 3)).not.toEqual(draw(['grip'], 4));
  expect(draw(['grip'], 3)).not.toEqual(draw(['mass'], 3));
  expect(draw(['grip', 'mass'], 3).filter((_, index) => index % 2 === 0)).toEqual(draw(['grip'], 3));
});

test('beyond the published directions a Latin hypercube fills in', () => {
  const keys = names(sobolDimensions + 2);
  const points = sobolSequence({ draws: 16, keys, seed: 5 });
  const rest = latinHypercube({ draws: 16, keys: keys.slice(sobolDimensions), seed: 5 });
  const tail = Array.from({ length: 16 }, (_, row) => [
    ...points.subarray((row + 1) * keys.length - 2, (row + 1) * keys.length),
  ]);
  expect(tail.flat()).toEqual([...rest]);
});

test('scrambled points are more even than a Latin hypercube, and that than plain chance', () => {
  const keys = names(6);
  const plain = Float64Array.from({ length: 6 * 1024 }, () => 0);
  const stream = randomStream(1, 'plain');
  for (let i = 0; i < plain.length; i += 1) plain[i] = stream.uniform();
  const sobol = centeredDiscrepancy(sobolSequence({ draws: 1024, keys, seed: 1 }), 6);
  const latin = centeredDiscrepancy(latinHypercube({ draws: 1024, keys, seed: 1 }), 6);
  expect(sobol).toBeLessThan(1.5e-4);
  expect(latin).toBeGreaterThan(4 * sobol);
  expect(centeredDiscrepancy(plain, 6)).toBeGreaterThan(1.5 * latin);
});

test('a scramble keeps the leading digit of every direction, so that no point is drawn twice', () => {
  const { directions } = scrambledDirections(7, 11, 'pad');
  directions.forEach((direction, index) => expect(Math.clz32(direction)).toBeLessThanOrEqual(index));
  const points = sobolSequence({ draws: 4096, keys: names(8), seed: 11 });
  expect(new Set(points.filter((_, index) => index % 8 === 7)).size).toBe(4096);
});

test('a dimension goes on where it stopped', () => {
  const points = sobolSequence({ draws: 100, keys: ['grip', 'mass'], seed: 9 });
  const rest = new Float64Array(63);
  sobolColumn({ dimension: 1, key: 'mass', seed: 9, from: 37 }, rest);
  expect([...rest]).toEqual([...points.filter((_, index) => index % 2 === 1).subarray(37)]);
  expect(() => sobolColumn({ dimension: sobolDimensions, key: 'x', seed: 9 }, rest)).toThrow('dimension');
});

test('no draws, names alike and points that are not whole are refused', () => {
  expect(() => sobolSequence({ draws: 0, keys: ['a'], seed: 1 })).toThrow('number of draws is 0');
  expect(() => sobolSequence({ draws: 4, keys: ['a', 'a'], seed: 1 })).toThrow('different names is 1');
  expect(() => centeredDiscrepancy([0.1, 0.2, 0.3], 2)).toThrow('points left over');
});
