import { expect, test } from 'vitest';
import { trapezoid } from './trapezoid.ts';

test('straight-line pieces are exact', () => {
  expect(trapezoid([0, 1, 3], [10, 8, 0])).toBe(17);
  expect(trapezoid([2], [5])).toBe(0);
  expect(trapezoid([], [])).toBe(0);
  expect(trapezoid([0, 1, 1, 2], [1, 1, 3, 3])).toBe(4);
});

test('a gap, a time that goes back and a missing value are refused, never skipped', () => {
  expect(() => trapezoid([0, 1, 2], [1, Number.NaN, 1])).toThrow('value to integrate is NaN');
  expect(() => trapezoid([0, Number.NaN, 2], [1, 1, 1])).toThrow('time is NaN');
  expect(() => trapezoid([0, 2, 1], [1, 1, 1])).toThrow('time is 1');
  expect(() => trapezoid([0, 1], [1])).toThrow('number of values is 1');
});
