import { describe, expect, it } from 'vitest';
import { wetPeakFactor } from './wet-peak-factor.ts';

describe('wetPeakFactor', () => {
  it('is one on a dry road at any speed and tread', () => {
    for (const speed of [0, 20, 36]) {
      expect(wetPeakFactor({ speed, waterDepth: 0, treadWorn: false })).toBe(1);
      expect(wetPeakFactor({ speed, waterDepth: 0, treadWorn: true })).toBe(1);
    }
  });

  it('never rises with speed, with depth or with a worn tread', () => {
    let before = Infinity;
    for (let speed = 0; speed <= 36; speed += 1) {
      const factor = wetPeakFactor({ speed, waterDepth: 0.001, treadWorn: false });
      expect(factor).toBeLessThanOrEqual(before + 1e-12);
      expect(wetPeakFactor({ speed, waterDepth: 0.0015, treadWorn: false })).toBeLessThan(factor);
      expect(wetPeakFactor({ speed, waterDepth: 0.001, treadWorn: true })).toBeLessThan(factor);
      before = factor;
    }
  });

  it('refuses what lies beyond the rows of the source', () => {
    expect(() => wetPeakFactor({ speed: 40, waterDepth: 0.001, treadWorn: false })).toThrow('speed on water');
    expect(() => wetPeakFactor({ speed: 20, waterDepth: 0.003, treadWorn: false })).toThrow('depth of water');
  });
});
