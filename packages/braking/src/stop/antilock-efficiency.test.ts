import { describe, expect, it } from 'vitest';
import { antilockEfficiency } from './antilock-efficiency.ts';

const at = (surfaceFactor: number, waterDepth = 0): number =>
  antilockEfficiency({ surfaceFactor, waterDepth });

describe('the efficiency of an antilock', () => {
  it('goes over from dry to wet without a jump, and stays within them', () => {
    expect(at(1)).toBe(0.956);
    expect(at(1.2)).toBe(0.956);
    expect(at(0.85)).toBeCloseTo(0.9585, 10);
    expect(at(0.7)).toBe(0.961);
    expect(at(0.1)).toBe(0.961);
  });

  it('is that of a wet road on any film of water', () => {
    expect(at(1, 1e-4)).toBe(at(0.7));
  });

  it('refuses a surface that is none', () => {
    expect(() => at(-1)).toThrow('surface factor is -1; accepted is 0 to 2');
    expect(() => at(Number.NaN)).toThrow('surface factor is NaN; accepted is 0 to 2');
  });
});
