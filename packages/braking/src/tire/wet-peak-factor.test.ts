import { describe, expect, it } from 'vitest';
import { deepestWater, newTread, waterSpeeds, wetPeakFactor, wornTread } from './wet-peak-factor.ts';

describe('wetPeakFactor', () => {
  it('is one on a dry road at any speed and tread', () => {
    for (const speed of [0, 20, 36, 80]) {
      for (const treadDepth of [0, wornTread, newTread])
        expect(wetPeakFactor({ speed, waterDepth: 0, treadDepth })).toBe(1);
    }
  });

  it('never rises with speed, with depth or with a worn tread', () => {
    let before = Infinity;
    for (let speed = 0; speed <= 36; speed += 1) {
      const factor = wetPeakFactor({ speed, waterDepth: 0.001, treadDepth: newTread });
      expect(factor).toBeLessThanOrEqual(before + 1e-12);
      expect(wetPeakFactor({ speed, waterDepth: 0.0015, treadDepth: newTread })).toBeLessThan(factor);
      expect(wetPeakFactor({ speed, waterDepth: 0.001, treadDepth: 0.004 })).toBeLessThan(factor);
      before = factor;
    }
  });

  it('is half way between new and worn for a tread half way between, and no better above new', () => {
    const at = (treadDepth: number) => wetPeakFactor({ speed: 20, waterDepth: 0.0007, treadDepth });
    expect(at((wornTread + newTread) / 2)).toBeCloseTo((at(wornTread) + at(newTread)) / 2, 12);
    expect(at(0.01)).toBe(at(newTread));
  });

  it('refuses what lies beyond the rows of the source', () => {
    const wet = { speed: 20, waterDepth: 0.001, treadDepth: newTread };
    expect(() => wetPeakFactor({ ...wet, speed: waterSpeeds[2] + 0.1 })).toThrow('speed on water');
    expect(() => wetPeakFactor({ ...wet, waterDepth: deepestWater + 1e-5 })).toThrow('depth of water');
    expect(() => wetPeakFactor({ ...wet, waterDepth: -1e-5 })).toThrow('depth of water');
    expect(() => wetPeakFactor({ ...wet, treadDepth: 0.0015 })).toThrow('tread left');
    expect(() => wetPeakFactor({ ...wet, treadDepth: Number.NaN })).toThrow('tread left');
  });
});
