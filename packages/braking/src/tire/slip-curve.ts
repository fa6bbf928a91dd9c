import { bracketedRoot, requireRange } from '@standstill/numerics';
import type { Tire } from '../set-up/tire.ts';
import { curveThroughPeak } from './curve-through-peak.ts';
import { magicFormula, type SlipCurve } from './magic-formula.ts';
import { slideRatioRange } from './slide-ratio-range.ts';

/**
 * Answers which slip curve has the three figures that a person can think in: the slip at the peak, the slide over peak
 * friction, and the slip stiffness over the peak force.
 *
 * Equation: B, C and E of y = sin(C atan(B κ − E (B κ − atan(B κ)))) with y = 1 at κ_p, slope K at zero and y = slide
 * ratio at κ = 1, with 1 < C and E ≤ 1.
 * Assumes: of two curves with the same three figures, the one with the smaller C.
 * Valid: where `slideRatioRange` has the slide ratio; otherwise refused with that range.
 *
 * @param tire - tire with κ_p, peak slip, 1; slide ratio, 1; K, slip stiffness over peak force, 1
 * @returns B, C, D and E, each 1; D = 1, so that `magicFormula` gives the force as a share of the peak
 * @throws OutOfRangeError where no curve has the three figures, with the range of slide ratios that has one
 * Source: [pacejka]
 * @example
 * slipCurve(exampleSetUp.frontTire).shapeFactor // => 1.44659
 */
export function slipCurve(tire: Tire): SlipCurve {
  const range = slideRatioRange(tire);
  const wanted = requireRange(
    'slide over peak friction at this peak slip and slip stiffness',
    tire.slideRatio,
    '',
    range.low,
    range.high,
  );
  const over = (shapeFactor: number) => magicFormula(curveThroughPeak(tire, shapeFactor), 1) - wanted;
  const shapeFactor = bracketedRoot(over, { low: 1.0001, high: range.shapeFactorAtLow, tolerance: 1e-13 });
  return curveThroughPeak(tire, shapeFactor);
}
