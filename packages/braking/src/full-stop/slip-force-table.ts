import type { Tire } from '../set-up/tire.ts';
import type { SlipCurve } from '../tire/magic-formula.ts';
import { slipCurve } from '../tire/slip-curve.ts';

/** Pieces over a slip of 0 to 1; no more than 511, see `at`. */
const pieces = 320;

/**
 * A tire's force over its peak force against slip, as cubic pieces: the Magic Formula at a tenth of its cost.
 *
 * Equation: between nodes the cubic with the value and the slope of y = sin(C atan(B κ − E (B κ − atan(B κ)))), as
 * c_0 + t (c_1 + t (c_2 + t c_3)).
 * Assumes: nothing beyond the curve; largest error about 1e-7 of the peak.
 * Valid: |κ| up to 1; beyond it the value at 1. Odd in κ.
 *
 * Allocates nothing after it is made, but for what finding the curve does in `take`.
 * Source: [pacejka]
 */
export class SlipForceTable {
  /** c_0 to c_3 of each piece; one more piece holds the value at 1. */
  readonly nodes = new Float64Array(4 * (pieces + 1));
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

  #fill(curve: SlipCurve): void {
    const { nodes } = this;
    let value = 0;
    let slope = slopeAt(curve, 0) / pieces;
    for (let piece = 0; piece < pieces; piece += 1) {
      const slip = (piece + 1) / pieces;
      const nextValue = valueAt(curve, slip);
      const nextSlope = slopeAt(curve, slip) / pieces;
      const rise = nextValue - value;
      nodes[4 * piece] = value;
      nodes[4 * piece + 1] = slope;
      nodes[4 * piece + 2] = 3 * rise - 2 * slope - nextSlope;
      nodes[4 * piece + 3] = slope + nextSlope - 2 * rise;
      value = nextValue;
      slope = nextSlope;
    }
    nodes[4 * pieces] = value;
  }

  /** Force over peak force, 1, at a slip, 1. */
  at(slip: number): number {
    const size = Math.abs(slip);
    const place = size < 1 ? pieces * size : pieces;
    const piece = (place | 0) & 511; // changes nothing, but tells the engine that no place beside it can overflow
    const t = place - piece;
    const { nodes } = this;
    const at = 4 * piece;
    const value = nodes[at]! + t * (nodes[at + 1]! + t * (nodes[at + 2]! + t * nodes[at + 3]!));
    return slip < 0 ? -value : value;
  }
}

function valueAt({ stiffnessFactor, shapeFactor, curvatureFactor }: SlipCurve, slip: number): number {
  const scaled = stiffnessFactor * slip;
  return Math.sin(shapeFactor * Math.atan(scaled - curvatureFactor * (scaled - Math.atan(scaled))));
}

function slopeAt({ stiffnessFactor, shapeFactor, curvatureFactor }: SlipCurve, slip: number): number {
  const scaled = stiffnessFactor * slip;
  const bent = scaled - curvatureFactor * (scaled - Math.atan(scaled));
  const bentSlope = stiffnessFactor * (1 - curvatureFactor * (1 - 1 / (1 + scaled * scaled)));
  return (Math.cos(shapeFactor * Math.atan(bent)) * shapeFactor * bentSlope) / (1 + bent * bent);
}
