import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mean } from '../statistics/mean.ts';
import { standardDeviation } from '../statistics/standard-deviation.ts';
import { latinHypercube } from './latin-hypercube.ts';
import { sobolDimensions } from './sobol-directions.ts';
import { sobolSequence } from './sobol-sequence.ts';

const runs = { numRuns: 500 };

function names(count: number): string[] {
  return Array.from({ length: count }, (_, index) => `input ${index}`);
}

test('among two to the k draws every slice of every dimension is hit exactly once, scrambled or not', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 9 }),
      fc.integer({ min: 1, max: 24 }),
      fc.integer(),
      fc.boolean(),
      (power, width, seed, scramble) => {
        const draws = 2 ** power;
        const points = sobolSequence({ draws, keys: names(width), seed, scramble });
        for (let j = 0; j < width; j += 1) {
          const hit = new Set<number>();
          for (let i = 0; i < draws; i += 1) hit.add(Math.floor(points[i * width + j]! * draws));
          expect(hit.size).toBe(draws);
        }
      },
    ),
    runs,
  );
});

test('that holds in all published dimensions', () => {
  const points = sobolSequence({ draws: 4096, keys: names(sobolDimensions), seed: 1 });
  for (let j = 0; j < sobolDimensions; j += 1) {
    const hit = new Set<number>();
    for (let i = 0; i < 4096; i += 1) hit.add(Math.floor(points[i * sobolDimensions + j]! * 4096));
    expect(hit.size).toBe(4096);
  }
});

test('the first two dimensions fill every elementary box equally', () => {
  fc.assert(
    fc.property(fc.integer(), fc.integer({ min: 0, max: 8 }), (seed, across) => {
      const points = sobolSequence({ draws: 256, keys: names(2), seed });
      const [wide, high] = [2 ** across, 2 ** (8 - across)];
      const hit = new Set<number>();
      for (let i = 0; i < 256; i += 1)
        hit.add(Math.floor(points[2 * i]! * wide) * high + Math.floor(points[2 * i + 1]! * high));
      expect(hit.size).toBe(256);
    }),
    runs,
  );
});

/** Mean 1 over the cube; what two of its inputs do together a Latin hypercube can't even out. */
function product(points: Float64Array): number {
  const draws = points.length / 4;
  return mean(
    Float64Array.from({ length: draws }, (_, i) => {
      let value = 1;
      for (let j = 0; j < 4; j += 1) value *= 1 + 0.8 * (points[4 * i + j]! - 0.5);
      return value;
    }),
  );
}

test('the mean is unbiased over seeds, and its error falls nearly with the number of draws, far under that of a Latin hypercube', () => {
  const spread = (draw: typeof latinHypercube, draws: number): { error: number; bias: number } => {
    const means = Array.from({ length: 200 }, (_, seed) => product(draw({ draws, keys: names(4), seed })));
    return { error: standardDeviation(means), bias: mean(means) - 1 };
  };
  const [few, many] = [spread(sobolSequence, 64), spread(sobolSequence, 1024)];
  const latin = spread(latinHypercube, 1024);
  const order = Math.log2(few.error / many.error) / 4;
  console.log(
    `Sobol: error of a mean ${few.error.toExponential(1)} from 64 draws, ${many.error.toExponential(1)} from 1024 (order ${order.toFixed(2)}); Latin hypercube ${latin.error.toExponential(1)}`,
  );
  expect(Math.abs(many.bias)).toBeLessThan((4 * many.error) / Math.sqrt(200));
  expect(order).toBeGreaterThan(0.9);
  expect(latin.error).toBeGreaterThan(4 * many.error);
});
