import { OutOfRangeError } from '@standstill/numerics';
import { describe, expect, it } from 'vitest';
import { tireClasses } from '../library/tire-classes.ts';
import { exampleSetUp } from '../set-up/example-set-up.ts';
import { slideRatioRange } from './slide-ratio-range.ts';
import { slipCurve } from './slip-curve.ts';

const tire = { ...exampleSetUp.frontTire, peakSlip: 0.1, slipStiffness: 30 };

describe('slipCurve', () => {
  it('refuses a triple without solution and names the nearest range', () => {
    const { low, high } = slideRatioRange(tire);
    try {
      slipCurve({ ...tire, slideRatio: 0.5 });
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(OutOfRangeError);
      expect(error).toMatchObject({ value: 0.5, low, high });
    }
    expect(low).toBeGreaterThan(0.5);
    expect(slipCurve({ ...tire, slideRatio: low + 1e-6 }).curvatureFactor).toBeLessThanOrEqual(1);
  });

  it('refuses a stiffness too low to reach the peak at its slip', () => {
    expect(() => slipCurve({ ...tire, slipStiffness: 9 })).toThrow('slip stiffness over peak force');
  });

  it.each(Object.values(tireClasses))('is solvable for the class "$title"', (tireClass) => {
    const curve = slipCurve({
      ...tire,
      peakSlip: tireClass.peakSlip.value,
      slideRatio: tireClass.slideRatio.value,
      slipStiffness: tireClass.slipStiffness.value,
    });
    expect(curve.shapeFactor).toBeGreaterThan(1);
    expect(curve.shapeFactor).toBeLessThan(2);
  });
});
