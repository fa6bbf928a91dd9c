import { describe, expect, test } from 'vitest';
import { formatQuantity } from './format-quantity.ts';
import { formatRange } from './format-range.ts';

describe('without an interval: four digits, zeros at the end dropped', () => {
  test.each([
    [0.3556, 'in', 'length', '14 in'],
    [0.53, '%', 'ratio', '53 %'],
    [4.1, '1', 'ratio', '4.1'],
    [1315, 'kg', 'mass', '1315 kg'],
    [123_456.7, 'm', 'length', '123500 m'],
    [999.96, 'm', 'length', '1000 m'],
    [2.5e-12, 'm³/Pa', 'volume-compliance', '2.5e-12 m³/Pa'],
    [350, '°F', 'temperature', '662 °F'],
    [0, 'm', 'length', '0 m'],
    [Number.NaN, 'ft', 'length', '– ft'],
    [Number.POSITIVE_INFINITY, 'ft', 'length', '∞ ft'],
    [-0.00001, 'N', 'force', '-1e-5 N'],
  ] as const)('%s in %s', (value, unit, dimension, text) => {
    expect(formatQuantity(value, unit, dimension)).toBe(text);
  });
});

describe('with an interval: no digit that it does not support', () => {
  test.each([
    [36.123, 0.9, '119 ft'],
    [36.123, 5, '119 ft'],
    [36.123, 20, '120 ft'],
    [36.123, 0.3, '118.5 ft'],
    [36, 0.003, '118.110 ft'],
    [0.1, 50, '0 ft'],
    [-0.1, 50, '0 ft'],
  ])('%s m ± %s m', (value, interval, text) => {
    expect(formatQuantity(value, 'ft', 'length', { interval })).toBe(text);
  });

  test('an interval of a temperature is a difference', () => {
    expect(formatQuantity(348.9, '°F', 'temperature', { interval: 10 })).toBe('660 °F');
  });

  test('fewer digits may be asked for, never more', () => {
    expect(formatQuantity(36.123, 'ft', 'length', { interval: 0.003, significantDigits: 2 })).toBe('120 ft');
    expect(formatQuantity(36.123, 'ft', 'length', { interval: 0.9, significantDigits: 9 })).toBe('119 ft');
  });
});

describe('ranges', () => {
  test.each([
    [0.95, 2.8, '3 to 9 ft'],
    [-0.2, 0.95, '-0.7 to 3.1 ft'],
    [36.001, 36.001, '118.1 ft'],
    [0, 0, '0 ft'],
  ])('%s to %s m', (low, high, text) => {
    expect(formatRange({ low, high }, 'ft', 'length')).toBe(text);
  });
});
