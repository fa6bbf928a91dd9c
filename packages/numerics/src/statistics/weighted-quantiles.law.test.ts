import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { weightedQuantiles } from './weighted-quantiles.ts';

const rows = fc.array(
  fc.record({
    value: fc.integer({ min: -50, max: 50 }),
    weight: fc.integer({ min: 0, max: 4 }),
  }),
  { minLength: 1, maxLength: 30 },
);
const share = fc.integer({ min: 0, max: 100 }).map((whole) => whole / 100);

/** One of them. */
function weightedQuantile(
  values: readonly number[],
  weights: readonly number[],
  probability: number,
): number {
  return weightedQuantiles(values, weights, [probability])[0]!;
}

describe('a weighted quantile', () => {
  it('leaves no more than its share of the weight below it, and no more than the rest above', () => {
    fc.assert(
      fc.property(rows, share, (all, probability) => {
        fc.pre(all.some(({ weight }) => weight > 0));
        const found = weightedQuantile(
          all.map(({ value }) => value),
          all.map(({ weight }) => weight),
          probability,
        );
        const weigh = (keep: (value: number) => boolean): number =>
          all.reduce((sum, { value, weight }) => sum + (keep(value) ? weight : 0), 0);
        const total = weigh(() => true);
        // A value counts with half of its weight on either side of it.
        const most = Math.max(...all.map(({ weight }) => weight)) / 2;
        expect(weigh((value) => value < found)).toBeLessThanOrEqual(probability * total + most + 1e-9);
        expect(weigh((value) => value > found)).toBeLessThanOrEqual((1 - probability) * total + most + 1e-9);
      }),
      { numRuns: 500 },
    );
  });

  it('does not care for the size of the weights, the order, or what weighs nothing', () => {
    fc.assert(
      fc.property(rows, share, (all, probability) => {
        fc.pre(all.some(({ weight }) => weight > 0));
        const of = (list: typeof all, factor: number): number =>
          weightedQuantile(
            list.map(({ value }) => value),
            list.map(({ weight }) => weight * factor),
            probability,
          );
        const plain = of(all, 1);
        expect(of(all.toReversed(), 1)).toBeCloseTo(plain, 9);
        expect(of(all, 8)).toBe(plain);
        expect(of([{ value: 999, weight: 0 }, ...all], 1)).toBe(plain);
      }),
      { numRuns: 500 },
    );
  });

  it('refuses weights that are not there', () => {
    expect(() => weightedQuantile([1, 2], [0, 0], 0.5)).toThrow('sum of the weights');
    expect(() => weightedQuantile([1, 2], [1], 0.5)).toThrow('number of weights');
  });
});
