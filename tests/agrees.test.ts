import { expect, it } from 'vitest';
import { agrees } from '../checks/agrees.ts';

it.each([
  [948.9, 0.05, 948.9, true],
  [948.9, 0.05, 948.95, true],
  [948.9, 0.05, 948.85, true],
  [948.9, 0.05, 948.9501, false],
  [948.9, 0.05, 948.8499, false],
  [1.571e-25, 5e-29, 1.5714e-25, true],
  [1.571e-25, 5e-29, 1.5716e-25, false],
  [70, 0.05, NaN, false],
  [70, 0.05, Infinity, false],
])('printed %d ± %d and ours %d: %s', (printed, tolerance, ours, agree) => {
  expect(agrees({ printed, tolerance }, ours)).toBe(agree);
});
