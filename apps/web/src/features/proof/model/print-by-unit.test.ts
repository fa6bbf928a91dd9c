import { expect, it } from 'vitest';
import { printByUnit } from './print-by-unit.ts';

const us = { system: 'us' } as const;

it('prints in the unit of the person where the result names one that they have a word for', () => {
  expect(printByUnit({ value: 30.48, low: 29.6, high: 31.4 }, 'm', us)).toBe('100 ft (97 to 103 ft)');
});

it('prints a bare ratio, and what has no unit of theirs, to the digits that the interval holds', () => {
  expect(printByUnit({ value: 0.9234, low: 0.881, high: 0.964 }, '', us)).toBe('0.923 (0.881 to 0.964)');
  expect(printByUnit({ value: 2.13e-6, low: 1.9e-6, high: 2.4e-6 }, '(m/s²)/Pa', us)).toBe(
    '0.0000021 (0.0000019 to 0.0000024) (m/s²)/Pa',
  );
});
