import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mean } from '../statistics/mean.ts';
import { standardDeviation } from '../statistics/standard-deviation.ts';
import { latinHypercube } from './latin-hypercube.ts';
import { latinHypercubeColumn } from './latin-hypercube-column.ts';
import { randomStream } from './random-stream.ts';

function column(table: Float64Array, width: number, index: number): number[] {
  return Array.from({ length: table.length / width }, (_, i) => table[i * width + index]!);
}

test('every slice of every dimension is hit exactly once', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 300 }),
      fc.integer({ min: 1, max: 6 }),
      fc.integer(),
      (draws, width, seed) => {
        const keys = Array.from({ length: width }, (_, i) => `input ${i}`);
        const table = latinHypercube({ draws, keys, seed });
        for (let j = 0; j < width; j += 1) {
          const slices = column(table, width, j).map((u) => Math.floor(u * draws));
          expect(slices.sort((a, b) => a - b)).toEqual(Array.from({ length: draws }, (_, i) => i));
        }
      },
    ),
  );
});

test('a column depends on its name, not on the company it keeps: that pairs two plans', () => {
  const alone = latinHypercube({ draws: 100, keys: ['grip'], seed: 5 });
  const together = latinHypercube({ draws: 100, keys: ['mass', 'grip', 'pad'], seed: 5 });
  expect(column(together, 3, 1)).toEqual([...alone]);
  expect(column(together, 3, 0)).not.toEqual([...alone]);
});

function smooth(u: number, v: number): number {
  return u * u + Math.exp(v);
}

test('the mean of a smooth function comes out far surer than with plain random draws', () => {
  const even = Float64Array.from({ length: 200 }, (_none, seed) => {
    const table = latinHypercube({ draws: 50, keys: ['u', 'v'], seed });
    return mean(Array.from({ length: 50 }, (_, i) => smooth(table[2 * i]!, table[2 * i + 1]!)));
  });
  const plain = Float64Array.from({ length: 200 }, (_none, seed) => {
    const stream = randomStream(seed, 'plain');
    return mean(Array.from({ length: 50 }, () => smooth(stream.uniform(), stream.uniform())));
  });
  expect(Math.abs(mean(even) - (1 / 3 + Math.E - 1))).toBeLessThan(1e-3);
  expect(standardDeviation(even)).toBeLessThan(standardDeviation(plain) / 10);
});

test('two names alike and no draws at all are refused', () => {
  expect(() => latinHypercube({ draws: 5, keys: ['a', 'a'], seed: 1 })).toThrow('different names is 1');
  expect(() => latinHypercube({ draws: 0, keys: ['a'], seed: 1 })).toThrow('number of draws is 0');
});

test('a column by itself holds the same numbers as in the whole table', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 200 }), fc.integer(), fc.string(), (draws, seed, key) => {
      const alone = new Float64Array(draws);
      latinHypercubeColumn({ key, seed }, alone);
      expect(alone).toStrictEqual(latinHypercube({ draws, keys: [key], seed }));
      const table = latinHypercube({ draws, keys: [`other than ${key}`, key], seed });
      expect([...alone]).toEqual(column(table, 2, 1));
    }),
    { numRuns: 500 },
  );
});
