import { expect, test } from 'vitest';
import { bracketedRoot } from './bracketed-root.ts';
import { NotBracketedError } from './not-bracketed-error.ts';

test('well-known roots', () => {
  const all = { tolerance: 0 };
  expect(bracketedRoot((x) => x * x - 2, { low: 0, high: 2, ...all })).toBeCloseTo(Math.SQRT2, 15);
  expect(bracketedRoot((x) => Math.cos(x) - x, { low: 0, high: 1, ...all })).toBeCloseTo(
    0.7390851332151607,
    15,
  );
  expect(bracketedRoot((x) => Math.exp(x) - 5, { low: 10, high: -10, ...all })).toBeCloseTo(Math.log(5), 15);
});

test('a root at an end, a step and a flat root', () => {
  expect(bracketedRoot((x) => x, { low: 0, high: 1, tolerance: 1e-9 })).toBe(0);
  expect(bracketedRoot((x) => x - 1, { low: 0, high: 1, tolerance: 1e-9 })).toBe(1);
  expect(bracketedRoot((x) => (x < 0.3 ? -1 : 1), { low: 0, high: 1, tolerance: 1e-9 })).toBeCloseTo(0.3, 8);
  expect(Math.abs(bracketedRoot((x) => x ** 9, { low: -1, high: 4, tolerance: 1e-6 }))).toBeLessThan(1e-6);
});

test('few calls: a smooth root takes about ten', () => {
  let calls = 0;
  const value = (x: number): number => {
    calls += 1;
    return x ** 3 - 2 * x - 5;
  };
  expect(bracketedRoot(value, { low: 2, high: 3, tolerance: 1e-12 })).toBeCloseTo(2.0945514815423265, 12);
  expect(calls).toBeLessThan(14);
});

/** A number at -1 and 1, nothing between. */
function hole(x: number): number {
  return Math.abs(x) === 1 ? x : Number.NaN;
}

test('ends of one sign and no-numbers throw a typed error', () => {
  expect(() => bracketedRoot((x) => x * x + 1, { low: -1, high: 1, tolerance: 0 })).toThrow(
    NotBracketedError,
  );
  expect(() => bracketedRoot(() => Number.NaN, { low: -1, high: 1, tolerance: 0 })).toThrow(
    NotBracketedError,
  );
  expect(() => bracketedRoot(hole, { low: -1, high: 1, tolerance: 0 })).toThrow(NotBracketedError);
  expect(() => bracketedRoot((x) => x + 5, { low: 1, high: 2, tolerance: 0 })).toThrow(
    'no sign change between 1 (value 6) and 2 (value 7)',
  );
});
