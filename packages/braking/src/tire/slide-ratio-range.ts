import { bracketedRoot } from '@standstill/numerics';
import { curveThroughPeak, type PeakFigures } from './curve-through-peak.ts';
import { magicFormula } from './magic-formula.ts';

export interface SlideRatioRange {
  /** Least slide ratio that a curve can have, 1. */
  readonly low: number;
  /** Greatest slide ratio, 1. */
  readonly high: number;
  /** Shape factor C at which the least is reached, 1. */
  readonly shapeFactorAtLow: number;
}

/** Closer to 1 than this the peak is no peak. */
const highestRatio = 0.999;
const lowestShapeFactor = 1.0001;
const highestShapeFactor = 3;
const goldenShare = (Math.sqrt(5) - 1) / 2;

/**
 * Answers which slide ratios can go with a peak slip and a slip stiffness: tires outside are not of this formula.
 *
 * Equation: least of y(κ = 1) over shape factors C with 1 < C ≤ 3 and E ≤ 1; E ≤ 1 where atan(B κ_p) ≤ tan(π / 2C).
 * Assumes: seen over C the slide ratio falls and then rises (checked on a grid by a law test).
 * Valid: as `curveThroughPeak`.
 *
 * @param figures - κ_p, slip at the peak, 1; K, slip stiffness over peak force, 1
 * @returns 1, least and greatest slide over peak friction, and the shape factor at the least
 * @throws OutOfRangeError where an input cannot be
 * Source: [pacejka]
 * @example
 * slideRatioRange({ peakSlip: 0.1, slipStiffness: 25 }).low // => 0.405014
 */
export function slideRatioRange(figures: PeakFigures): SlideRatioRange {
  const shapeFactorAtLow = leastBetween(
    (shapeFactor) => magicFormula(curveThroughPeak(figures, shapeFactor), 1),
    lowestShapeFactor,
    greatestShapeFactor(figures),
  );
  const low = magicFormula(curveThroughPeak(figures, shapeFactorAtLow), 1);
  return { low: Math.max(0, low), high: highestRatio, shapeFactorAtLow };
}

/** Where the curvature factor E reaches 1. */
function greatestShapeFactor({ peakSlip, slipStiffness }: PeakFigures): number {
  const room = (shapeFactor: number) =>
    Math.tan(Math.PI / (2 * shapeFactor)) - Math.atan((slipStiffness * peakSlip) / shapeFactor);
  if (room(highestShapeFactor) >= 0) return highestShapeFactor;
  return bracketedRoot(room, { low: lowestShapeFactor, high: highestShapeFactor, tolerance: 1e-12 });
}

/** Golden-section search for the lowest place of a function that falls and then rises. */
function leastBetween(value: (x: number) => number, low: number, high: number): number {
  let left = high - goldenShare * (high - low);
  let right = low + goldenShare * (high - low);
  let atLeft = value(left);
  let atRight = value(right);
  while (high - low > 1e-9) {
    if (atLeft < atRight) {
      high = right;
      right = left;
      atRight = atLeft;
      left = high - goldenShare * (high - low);
      atLeft = value(left);
    } else {
      low = left;
      left = right;
      atLeft = atRight;
      right = low + goldenShare * (high - low);
      atRight = value(right);
    }
  }
  return (low + high) / 2;
}
