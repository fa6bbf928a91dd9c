import { requireRange } from '@standstill/numerics';

/** The four factors of a Magic Formula. */
export interface SlipCurve {
  /** B, over the unit of slip. */
  readonly stiffnessFactor: number;
  /** C, 1. */
  readonly shapeFactor: number;
  /** D, in the unit of the force; 1 where the curve is a share of the peak. */
  readonly peakFactor: number;
  /** E, 1. */
  readonly curvatureFactor: number;
}

/**
 * Answers the longitudinal force of a tire at a slip, by the Magic Formula.
 *
 * Equation: F = D sin(C atan(B κ − E (B κ − atan(B κ)))).
 * Assumes: steady slip, straight ahead, no offsets.
 * Valid: any slip; odd in slip. With D = 1 the result is a share of the peak force.
 *
 * @param curve - B, 1 per unit of slip; C, 1; D, N or 1; E, 1
 * @param slip - κ, 1: 0 rolls freely, 1 is locked (or in the unit that B is over)
 * @returns force, in the unit of D (N, or 1 as a share of the peak)
 * @throws OutOfRangeError where the slip is not a number
 * Source: [pacejka]
 * @example
 * magicFormula({ stiffnessFactor: 10, shapeFactor: 1.9, peakFactor: 1, curvatureFactor: 0.97 }, 0.05) // => 0.735619
 */
export function magicFormula(curve: SlipCurve, slip: number): number {
  requireRange('slip', slip, '', -1e6, 1e6);
  const scaled = curve.stiffnessFactor * slip;
  const bent = scaled - curve.curvatureFactor * (scaled - Math.atan(scaled));
  return curve.peakFactor * Math.sin(curve.shapeFactor * Math.atan(bent));
}
