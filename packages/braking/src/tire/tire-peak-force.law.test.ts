import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyTire } from '../set-up/any-set-up.testing.ts';
import { peakFriction } from './peak-friction.ts';
import { tirePeakForce } from './tire-peak-force.ts';

const anyLoad = fc.double({ min: 1, max: 15_000, noNaN: true });
const anyFactor = fc.double({ min: 0.01, max: 1.5, noNaN: true });

describe('peak force of a tire', () => {
  it('grows with load, but never faster than the load', () => {
    fc.assert(
      fc.property(anyTire, anyLoad, anyFactor, (tire, load, surfaceFactor) => {
        const one = tirePeakForce({ tire, load, surfaceFactor });
        const two = tirePeakForce({ tire, load: 2 * load, surfaceFactor });
        expect(two).toBeGreaterThanOrEqual(one);
        expect(two).toBeLessThanOrEqual(2 * one * (1 + 1e-12));
      }),
      { numRuns: 500 },
    );
  });

  it('loses the same share of friction at every doubling of the load', () => {
    fc.assert(
      fc.property(anyTire, anyLoad, (tire, load) => {
        const friction = (at: number) => peakFriction({ tire, load: at, surfaceFactor: 1 });
        expect(friction(2 * load) / friction(load)).toBeCloseTo(2 ** -tire.loadSensitivity, 12);
      }),
      { numRuns: 500 },
    );
  });

  it('is the stated friction at the nominal load and nothing at none', () => {
    fc.assert(
      fc.property(anyTire, anyFactor, (tire, surfaceFactor) => {
        const friction = peakFriction({ tire, load: tire.nominalLoad, surfaceFactor });
        expect(friction).toBeCloseTo(surfaceFactor * tire.peakFriction, 12);
        expect(tirePeakForce({ tire, load: 0, surfaceFactor })).toBe(0);
      }),
      { numRuns: 500 },
    );
  });
});
