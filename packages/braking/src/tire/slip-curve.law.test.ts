import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleSetUp } from '../set-up/example-set-up.ts';
import { curveThroughPeak } from './curve-through-peak.ts';
import { magicFormula } from './magic-formula.ts';
import { slideRatioRange } from './slide-ratio-range.ts';
import { slipCurve } from './slip-curve.ts';

/** Peak slip and stiffness from a curve that barely bends (product 1) to one that bends at once. */
const anyPeak = fc
  .record({
    peakSlip: fc.double({ min: 0.02, max: 0.4, noNaN: true }),
    product: fc.double({ min: 1.01, max: 8, noNaN: true }),
  })
  .map(({ peakSlip, product }) => ({ peakSlip, slipStiffness: product / peakSlip }));

const anySolvable = fc
  .tuple(anyPeak, fc.double({ min: 0.01, max: 0.99, noNaN: true }))
  .map(([peak, share]) => {
    const { low, high } = slideRatioRange(peak);
    return { ...exampleSetUp.frontTire, ...peak, slideRatio: low + share * (high - low) };
  });

describe('slip curve', () => {
  it('has the three figures that it was asked for, with 1 < C and E ≤ 1', () => {
    fc.assert(
      fc.property(anySolvable, (tire) => {
        const curve = slipCurve(tire);
        expect(curve.shapeFactor).toBeGreaterThan(1);
        expect(curve.curvatureFactor).toBeLessThanOrEqual(1 + 1e-9);
        expect(magicFormula(curve, tire.peakSlip)).toBeCloseTo(1, 9);
        expect(magicFormula(curve, 1)).toBeCloseTo(tire.slideRatio, 9);
        expect(curve.stiffnessFactor * curve.shapeFactor).toBeCloseTo(tire.slipStiffness, 9);
      }),
      { numRuns: 500 },
    );
  });

  it('rises up to the peak, falls after it, and is odd', () => {
    fc.assert(
      fc.property(anySolvable, (tire) => {
        const curve = slipCurve(tire);
        for (let step = 1; step <= 20; step += 1) {
          const before = (tire.peakSlip * (step - 1)) / 20;
          const after = tire.peakSlip + ((1 - tire.peakSlip) * (step - 1)) / 20;
          const force = (slip: number) => magicFormula(curve, slip);
          expect(force(before + tire.peakSlip / 20)).toBeGreaterThanOrEqual(force(before) - 1e-12);
          expect(force(after + (1 - tire.peakSlip) / 20)).toBeLessThanOrEqual(force(after) + 1e-12);
          expect(force(-after)).toBeCloseTo(-force(after), 12);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('has no slide ratio below the least that is stated: the search over C did not stop at a false valley', () => {
    fc.assert(
      fc.property(anyPeak, fc.double({ min: 1.0002, max: 3, noNaN: true }), (peak, shapeFactor) => {
        const curve = curveThroughPeak(peak, shapeFactor);
        fc.pre(curve.curvatureFactor <= 1);
        expect(Math.max(0, magicFormula(curve, 1))).toBeGreaterThanOrEqual(slideRatioRange(peak).low - 1e-9);
      }),
      { numRuns: 2000 },
    );
  });
});
