import type { Tire } from '../set-up/tire.ts';
import type { SlipCurve } from '../tire/magic-formula.ts';
import { slipCurve } from '../tire/slip-curve.ts';

/** Pieces over a slip of 0 to 1. */
const pieces = 320;

/**
 * A tire's force over its peak force against slip, as cubic pieces: the Magic Formula at a tenth of its cost.
 *
 * Equation: between nodes the cubic with the value and the slope of y = sin(C atan(B κ − E (B κ − atan(B κ)))).
 * Assumes: nothing beyond the curve; largest error about 1e-7 of the peak.
 * Valid: |κ| up to 1; beyond it the value at 1. Odd in κ.
 *
 * Allocates nothing after it is made, but for what finding the curve does in `take`.
 * Source: [pacejka]
 */
export class SlipForceTable {
  /** Value and slope over one piece, by turns: y_0, d_0, y_1, d_1, ... */
  readonly nodes = new Float64Array(2 * (pieces + 2));
  /** C_κ / F_peak, 1. */
  stiffness = 0;
  #peakSlip = 0;
  #slideRatio = 0;
  #slipStiffness = 0;

  /** Takes on a tire; one with the same three figures costs nothing. */
  take(tire: Tire): void {
    const { peakSlip, slideRatio, slipStiffness } = tire;
    const same =
      peakSlip === this.#peakSlip && slideRatio === this.#slideRatio && slipStiffness === this.#slipStiffness;
    if (same) return;
    this.#fill(slipCurve(tire));
    this.#peakSlip = peakSlip;
    this.#slideRatio = slideRatio;
    this.#slipStiffness = slipStiffness;
    this.stiffness = slipStiffness;
  }

  #fill({ stiffnessFactor, shapeFactor, curvatureFactor }: SlipCurve): void {
    const { nodes } = this;
    for (let i = 0; i <= pieces + 1; i += 1) {
      const slip = Math.min(1, i / pieces);
      const scaled = stiffnessFactor * slip;
      const bent = scaled - curvatureFactor * (scaled - Math.atan(scaled));
      const angle = shapeFactor * Math.atan(bent);
      const bentSlope = stiffnessFactor * (1 - curvatureFactor * (1 - 1 / (1 + scaled * scaled)));
      nodes[2 * i] = Math.sin(angle);
      nodes[2 * i + 1] = (Math.cos(angle) * shapeFactor * bentSlope) / (1 + bent * bent) / pieces;
    }
  }

  /** Force over peak force, 1, at a slip, 1. */
  at(slip: number): number {
    const size = slip < 0 ? -slip : slip;
    const place = size < 1 ? pieces * size : pieces;
    const piece = place | 0;
    const t = place - piece;
    const { nodes } = this;
    const first = nodes[2 * piece]!;
    const rise = nodes[2 * piece + 2]! - first;
    const bend = nodes[2 * piece + 1]! - rise;
    const back = nodes[2 * piece + 3]! - rise;
    const left = 1 - t;
    const value = first + t * (rise + left * (left * bend - t * back));
    return slip < 0 ? -value : value;
  }
}
