import { requireRange } from '@standstill/numerics';
import type { SlipCurve } from './magic-formula.ts';

export interface PeakFigures {
  /** κ_p, slip at the peak, 1. */
  readonly peakSlip: number;
  /** K, slip stiffness over peak force, 1. */
  readonly slipStiffness: number;
}

/**
 * Answers which Magic Formula has a peak slip and a slip stiffness, for a chosen shape factor.
 *
 * Equation: B = K / C; E = (B κ_p − tan(π / 2C)) / (B κ_p − atan(B κ_p)); D = 1.
 * Valid: C above 1; peak slip 0.01 to 0.6; slip stiffness times peak slip from 1 (a curve that bends down from the
 * start) to 20.
 *
 * @param figures - κ_p, slip at the peak, 1; K, slip stiffness over peak force, 1
 * @param shapeFactor - C, 1
 * @returns B, C, D and E of a curve with peak 1, each 1
 * @throws OutOfRangeError where an input cannot be
 * Source: [pacejka]
 * @example
 * curveThroughPeak({ peakSlip: 0.1, slipStiffness: 22 }, 1.6).stiffnessFactor // => 13.75
 */
export function curveThroughPeak(figures: PeakFigures, shapeFactor: number): SlipCurve {
  const peakSlip = requireRange('slip at the peak', figures.peakSlip, '', 0.01, 0.6);
  requireRange('slip stiffness over peak force', figures.slipStiffness, '', 1 / peakSlip, 20 / peakSlip);
  requireRange('shape factor', shapeFactor, '', 1 + 1e-9, 3);
  const stiffnessFactor = figures.slipStiffness / shapeFactor;
  const scaled = stiffnessFactor * peakSlip;
  const curvatureFactor = (scaled - Math.tan(Math.PI / (2 * shapeFactor))) / (scaled - Math.atan(scaled));
  return { stiffnessFactor, shapeFactor, peakFactor: 1, curvatureFactor };
}
