import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyPedalForce, anySetUp } from '../set-up/any-set-up.testing.ts';
import { linePressures } from './line-pressures.ts';
import { pedalForceFor } from './pedal-force-for.ts';

describe('line pressures', () => {
  it('rise with the foot, front and rear, and are numbers', () => {
    fc.assert(
      fc.property(anySetUp, anyPedalForce, anyPedalForce, (setUp, pedalForce, more) => {
        const light = linePressures({ setUp, pedalForce });
        const hard = linePressures({ setUp, pedalForce: pedalForce + more });
        expect(hard.front).toBeGreaterThanOrEqual(light.front);
        expect(hard.rear).toBeGreaterThanOrEqual(light.rear - 1e-6);
        expect(Number.isFinite(hard.front + hard.rear)).toBe(true);
        if (light.boosterRunOut && more > 0) expect(hard.boosterRunOut).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it('are undone by the pedal force for a front pressure', () => {
    fc.assert(
      fc.property(anySetUp, fc.double({ min: 1, max: 800, noNaN: true }), (setUp, pedalForce) => {
        const { front } = linePressures({ setUp, pedalForce });
        fc.pre(front <= 60e6);
        expect(pedalForceFor({ setUp, frontPressure: front })).toBeCloseTo(pedalForce, 6);
      }),
      { numRuns: 1000 },
    );
  });
});
