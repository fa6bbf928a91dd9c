import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleRoad, exampleSetUp } from '../set-up/example-set-up.ts';
import { heldWetFactor, isBeyondWaterSource } from './held-wet-factor.ts';
import { WaterGrip } from './water-grip.ts';
import { newTread, waterSpeeds, wetPeakFactor, wornTread } from './wet-peak-factor.ts';

const runs = { numRuns: 500 };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyDepth = number(0, 0.002);
const anyTread = number(0, 0.012);
const anySpeed = number(0, 100);

const tireWith = (treadDepth: number) => ({ ...exampleSetUp.frontTire, treadDepth });
const roadWith = (waterDepth: number) => ({ ...exampleRoad, waterDepth });

describe('water grip', () => {
  it('is the formula at every speed that the source has, and holds its last row beyond', () => {
    const grip = new WaterGrip();
    fc.assert(
      fc.property(anyDepth, anyTread, anySpeed, (waterDepth, treadDepth, speed) => {
        const tire = tireWith(treadDepth);
        const road = roadWith(waterDepth);
        grip.take(tire, road, speed);
        const inSource = {
          speed: Math.min(speed, waterSpeeds[2]),
          waterDepth,
          treadDepth: Math.max(treadDepth, wornTread),
        };
        expect(grip.factorAt(speed)).toBeCloseTo(wetPeakFactor(inSource), 12);
        expect(heldWetFactor({ tire, road, speed })).toBeCloseTo(wetPeakFactor(inSource), 12);
        const isHeld = inSource.speed < speed || inSource.treadDepth > treadDepth;
        expect(grip.isBeyondSource).toBe(isHeld && waterDepth > 0);
        expect(isBeyondWaterSource({ tire, road, speed })).toBe(isHeld && waterDepth > 0);
      }),
      runs,
    );
  });

  it('lies between nothing and the dry road, and never rises with depth or falls with tread', () => {
    const grip = new WaterGrip();
    const factor = (waterDepth: number, treadDepth: number, speed: number): number => {
      grip.take(tireWith(treadDepth), roadWith(waterDepth), speed);
      return grip.factorAt(speed);
    };
    fc.assert(
      fc.property(anyDepth, anyTread, anySpeed, number(0, 1), (depth, tread, speed, share) => {
        const here = factor(depth, tread, speed);
        expect(here).toBeGreaterThanOrEqual(0);
        expect(here).toBeLessThanOrEqual(1);
        expect(factor(share * depth, tread, speed)).toBeGreaterThanOrEqual(here - 1e-12);
        expect(factor(depth, tread + share * (newTread - tread), speed)).toBeGreaterThanOrEqual(
          tread < newTread ? here - 1e-12 : 0,
        );
      }),
      runs,
    );
  });

  it('refuses water deeper than the source has, and a tread that is none', () => {
    const grip = new WaterGrip();
    expect(() => grip.take(tireWith(0.007), roadWith(0.0021), 20)).toThrow('depth of water');
    expect(() => grip.take(tireWith(-0.001), roadWith(0.001), 20)).toThrow('tread left');
    expect(() => grip.take(tireWith(0.007), roadWith(0.001), 200)).not.toThrow();
  });
});
