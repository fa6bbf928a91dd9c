import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sobolIndices } from './sobol-indices.ts';
import type { OutputSensitivity } from './sobol-indices.ts';

const runs = { numRuns: 500 };
const weights = fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: 2, maxLength: 6 });

interface Sum {
  readonly weights: readonly number[];
  readonly seed: number;
}

/** A sum of weighted inputs; by far not all of them may count. */
function additive({ weights: all, seed }: Sum): OutputSensitivity {
  const [output] = sobolIndices({
    inputs: all.map((_, index) => `x${index}`),
    evaluate: (values, results) => {
      results[0] = values.reduce((sum, value, index) => sum + all[index]! * value, 0);
    },
    outputs: 1,
    draws: 512,
    seed,
    redraws: 2,
  });
  return output!;
}

test('the indices of a sum are the shares of its variance, first-order and total alike, and sum to one', () => {
  let worst = 0;
  fc.assert(
    fc.property(fc.record({ weights, seed: fc.integer() }), (sum) => {
      const squares = sum.weights.reduce((total, weight) => total + weight * weight, 0);
      fc.pre(squares > 1e-3);
      const { indices, variance } = additive(sum);
      expect(Math.abs(variance / (squares / 12) - 1)).toBeLessThan(0.1);
      const whole = indices.reduce((total, { first }) => total + first, 0);
      worst = Math.max(worst, Math.abs(whole - 1));
      indices.forEach(({ first, total }, index) => {
        const share = sum.weights[index]! ** 2 / squares;
        expect(Math.abs(first - share)).toBeLessThan(0.1);
        expect(Math.abs(total - share)).toBeLessThan(0.1);
      });
    }),
    runs,
  );
  console.log(`sum of first-order indices of a sum, from 512 rows: off one by at most ${worst.toFixed(3)}`);
  expect(worst).toBeLessThan(0.12);
});

test('first-order indices of any product sum to one at most, and none is over its total, within noise', () => {
  fc.assert(
    fc.property(fc.record({ weights, seed: fc.integer() }), ({ weights: all, seed }) => {
      const [output] = sobolIndices({
        inputs: all.map((_, index) => `x${index}`),
        evaluate: (values, results) => {
          results[0] = values.reduce(
            (product, value, index) => product * (1 + all[index]! * (value - 0.5)),
            1,
          );
        },
        outputs: 1,
        draws: 512,
        seed,
        redraws: 2,
      });
      const indices = output?.indices ?? [];
      expect(indices.reduce((sum, { first }) => sum + first, 0)).toBeLessThan(1.25);
      for (const { first, total } of indices) {
        expect(total).toBeGreaterThanOrEqual(0);
        expect(first).toBeLessThan(total + 0.25);
      }
    }),
    runs,
  );
});

test('an input that changes nothing has indices of exactly zero', () => {
  fc.assert(
    fc.property(weights, fc.integer(), (all, seed) => {
      fc.pre(all.some((weight) => Math.abs(weight) > 1e-3));
      const idle = additive({ weights: [...all, 0], seed }).indices.at(-1);
      expect(Math.abs(idle?.first ?? NaN) + Math.abs(idle?.total ?? NaN)).toBe(0);
    }),
    runs,
  );
});

test('intervals hold the known indices of the g-function at least as often as they say', () => {
  const a = [0, 1, 4.5];
  const parts = a.map((each) => 1 / (3 * (1 + each) ** 2));
  const variance = parts.reduce((product, part) => product * (1 + part), 1) - 1;
  const held = { first: 0, total: 0 };
  const seeds = 200;
  for (let seed = 0; seed < seeds; seed += 1) {
    const [output] = sobolIndices({
      inputs: a.map((_, index) => `x${index}`),
      evaluate: (values, results) => {
        results[0] = values.reduce(
          (g, x, index) => (g * (Math.abs(4 * x - 2) + a[index]!)) / (1 + a[index]!),
          1,
        );
      },
      outputs: 1,
      draws: 256,
      seed,
    });
    output?.indices.forEach(({ firstInterval, totalInterval }, index) => {
      const first = parts[index]! / variance;
      const total = (first * (1 + variance)) / (1 + parts[index]!);
      held.first += firstInterval.low <= first && first <= firstInterval.high ? 1 : 0;
      held.total += totalInterval.low <= total && total <= totalInterval.high ? 1 : 0;
    });
  }
  const [first, total] = [held.first / (3 * seeds), held.total / (3 * seeds)];
  console.log(
    `95 % intervals of Sobol indices hold: first-order ${(100 * first).toFixed(1)} %, total ${(100 * total).toFixed(1)} %`,
  );
  expect(first).toBeGreaterThan(0.93);
  expect(total).toBeGreaterThan(0.93);
});
