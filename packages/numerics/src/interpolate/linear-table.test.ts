import { expect, test } from 'vitest';
import { linearTable } from './linear-table.ts';

const xs = [0, 100, 300, 600];
const ys = Float64Array.of(0.4, 0.5, 0.3, 0.2);

test('points, straight lines between them, end values beyond them', () => {
  for (const [i, x] of xs.entries()) expect(linearTable(xs, ys, x)).toBe(ys[i]);
  expect(linearTable(xs, ys, 50)).toBeCloseTo(0.45, 15);
  expect(linearTable(xs, ys, 450)).toBeCloseTo(0.25, 15);
  expect(linearTable(xs, ys, -40)).toBe(0.4);
  expect(linearTable(xs, ys, 1e9)).toBe(0.2);
});

test('one point is a constant, a step takes the later value, NaN stays NaN', () => {
  expect(linearTable([5], [7], -1)).toBe(7);
  expect(linearTable([0, 1, 1, 2], [0, 0, 1, 1], 1)).toBe(1);
  expect(linearTable([1, 1, 2], [3, 4, 5], 1)).toBe(4);
  expect(linearTable(xs, ys, Number.NaN)).toBeNaN();
});

test('an empty or lopsided table is refused', () => {
  expect(() => linearTable([], [], 1)).toThrow('points in the table is 0');
  expect(() => linearTable([1, 2], [1], 1)).toThrow('values in the table is 1');
});
