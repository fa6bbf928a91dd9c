import { expect, test } from 'vitest';
import { tridiagonal, type TridiagonalSystem } from './tridiagonal.ts';

test('a chain with a known answer, in place', () => {
  const right = Float64Array.of(0, 0, 5);
  const system = {
    lower: Float64Array.of(9, -1, -1),
    diagonal: Float64Array.of(2, 2, 2),
    upper: Float64Array.of(-1, -1, 9),
    right,
  };
  expect(tridiagonal(system)).toBe(right);
  expect([...right].map((x) => Math.round(x * 1e12) / 1e12)).toEqual([1.25, 2.5, 3.75]);
  expect([...system.upper]).toEqual([-1, -1, 9]);
});

function one(pivot: number): TridiagonalSystem {
  const zero = Float64Array.of(0);
  return { lower: zero, diagonal: Float64Array.of(pivot), upper: zero, right: Float64Array.of(1) };
}

test('no unknowns is no trouble; a zero pivot, NaN and uneven bands are refused', () => {
  const empty = new Float64Array(0);
  expect(tridiagonal({ lower: empty, diagonal: empty, upper: empty, right: empty }).length).toBe(0);
  expect(() => tridiagonal(one(0))).toThrow('pivot is 0');
  expect(() => tridiagonal(one(Number.NaN))).toThrow('pivot is NaN');
  expect(() => tridiagonal({ ...one(1), lower: empty })).toThrow('length of a band is 0');
});
