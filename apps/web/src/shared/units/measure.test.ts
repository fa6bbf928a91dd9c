import { describe, expect, it } from 'vitest';
import { measure } from './measure.ts';

const feet = measure('stopping-distance', { system: 'us' });

describe('measure', () => {
  it('shows no digit that the interval does not support', () => {
    expect(feet.text({ value: 36.123, low: 34.9, high: 37.3 })).toBe('119 ft');
    expect(feet.range({ value: 2, low: 0.95, high: 2.8 })).toBe('3 to 9 ft');
  });

  it('shows a bare distance to the foot', () => {
    expect(feet.text(36.123)).toBe('119 ft');
  });

  it('gives differences their sign, and nothing to zero', () => {
    expect(feet.signed(2.9)).toBe('+10 ft');
    expect(feet.signed(-2.9)).toBe('−10 ft');
    expect(feet.signed(0.001)).toBe('0 ft');
  });

  it('follows the person, kind by kind', () => {
    expect(
      measure('stopping-distance', { system: 'metric' }).text({ value: 36.123, low: 34.9, high: 37.3 }),
    ).toBe('36.1 m');
    const own = { system: 'us', own: { 'line-pressure': 'bar' } } as const;
    expect(measure('line-pressure', own).text({ value: 4.56e6, low: 4.2e6, high: 4.9e6 })).toBe('46 bar');
    expect(measure('stopping-distance', own).symbol).toBe('ft');
    expect(measure('stopping-distance', own).si).toBeCloseTo(0.3048, 12);
  });
});
