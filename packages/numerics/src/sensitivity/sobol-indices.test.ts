import { expect, test } from 'vitest';
import { sobolIndices } from './sobol-indices.ts';

/** Two inputs that only count together, one that counts alone, one that does not count. */
const inputs = ['left', 'right', 'alone', 'idle'];
function evaluate(values: Float64Array, results: Float64Array): void {
  results[0] = (values[0]! - 0.5) * (values[1]! - 0.5) + 0.2 * values[2]!;
  results[1] = 3;
}

test('what counts alone, together and not at all is told apart', () => {
  const [output] = sobolIndices({ inputs, evaluate, outputs: 2, draws: 4096, seed: 1 });
  // V = 1/144 of the product and 0.04/12 of the line.
  const alone = 0.04 / 12 / (1 / 144 + 0.04 / 12);
  expect(output?.variance).toBeCloseTo(1 / 144 + 0.04 / 12, 4);
  const [left, right, single, idle] = output?.indices ?? [];
  expect([left?.first, right?.first]).toEqual([expect.closeTo(0, 1), expect.closeTo(0, 1)]);
  expect([left?.total, right?.total]).toEqual([expect.closeTo(1 - alone, 2), expect.closeTo(1 - alone, 2)]);
  expect([single?.first, single?.total]).toEqual([expect.closeTo(alone, 2), expect.closeTo(alone, 2)]);
  expect([idle?.first, idle?.total]).toEqual([0, 0]);
});

test('a group answers for all that is in it', () => {
  const groups = [
    { name: 'product', members: [0, 1, 3] },
    { name: 'line', members: [2] },
    { name: 'left and line', members: [0, 2] },
  ];
  const [output] = sobolIndices({ inputs, groups, evaluate, outputs: 1, draws: 4096, seed: 1 });
  const [product, line, both] = output?.indices ?? [];
  expect(product?.group).toBe('product');
  expect(product?.first).toBeCloseTo(product?.total ?? NaN, 2);
  expect((product?.first ?? NaN) + (line?.first ?? NaN)).toBeCloseTo(1, 2);
  expect(both?.first).toBeCloseTo(line?.first ?? NaN, 1);
  expect(both?.total).toBeCloseTo(1, 1);
});

test('an output that does not vary has no indices, and rows without an answer are left out of all', () => {
  const [, constant] = sobolIndices({ inputs, evaluate, outputs: 2, draws: 64, seed: 1 });
  expect(constant).toMatchObject({ mean: 3, variance: 0, indices: [] });
  const holed = (values: Float64Array, results: Float64Array): void => {
    results[0] = values[0]! > 0.75 ? NaN : values[0]!;
  };
  const [output] = sobolIndices({
    inputs: inputs.slice(0, 1),
    evaluate: holed,
    outputs: 1,
    draws: 1024,
    seed: 1,
  });
  expect(output?.rows).toBeGreaterThan(0.5 * 1024);
  expect(output?.rows).toBeLessThan(0.6 * 1024);
  expect(output?.mean).toBeCloseTo(0.375, 2);
});

test('values are what the plan makes of shares', () => {
  const seen: number[] = [];
  sobolIndices({
    inputs: inputs.slice(0, 2),
    toValue: (share, input) => 10 * (input + 1) + share,
    evaluate: (values, results) => {
      seen.push(values[0]!, values[1]!);
      results[0] = values[0]! * values[1]!;
    },
    outputs: 1,
    draws: 8,
    seed: 1,
  });
  expect(seen.length).toBe(2 * 8 * 4);
  expect(seen.every((value, index) => Math.floor(value / 10) === (index % 2) + 1)).toBe(true);
});

test('nothing to draw from is refused', () => {
  expect(() => sobolIndices({ inputs: [], evaluate, outputs: 1, draws: 8, seed: 1 })).toThrow(
    'number of inputs',
  );
  expect(() => sobolIndices({ inputs, evaluate, outputs: 1, draws: 1, seed: 1 })).toThrow('number of draws');
});
