import type { RearLine } from '../stop/rear-line.ts';
import type { Wheel } from './wheel.ts';

/** How far past its peak slip a wheel is when the driver has given back half of the pressure, over the peak slip. */
const alarm = 3;

/**
 * A driver without antilock who feels every wheel's limit and never asks more of the one that would lock first than a
 * share of it; a wheel that slips past its peak all the same makes the driver give back more.
 *
 * Equation: p_f ≤ min over wheels of p(s r F_peak g), g from 1 at the peak slip to ½ at three times it.
 * Assumes: as `DriverFoot`: never late.
 * Source: [common-practice]
 */
export class LimitDriver {
  /** False for a foot that stays down, and where an antilock takes care. */
  acts = false;
  /** s, 1. */
  share = 0.9;
  /** κ_p, 1, of the front and rear tires. */
  frontPeakSlip = 0.1;
  rearPeakSlip = 0.1;
  /** Whether the wheel that held the driver back last was a front one. */
  holdsFront = true;
  /** True where an electronic limit keeps the rear wheels, so that the driver need not. */
  rearIsKept = false;

  /**
   * Pa in the front line at most, for a wheel whose tire could give `peak`, N, at pad friction `rubbing`, 1, slipping by
   * `slip`, 1, while the car slows by `slowing`, m/s².
   */
  allowed(
    wheel: Wheel,
    isFront: boolean,
    line: RearLine,
    peak: number,
    rubbing: number,
    slip: number,
    slowing: number,
  ): number {
    if (!isFront && this.rearIsKept) return Infinity;
    const peakSlip = isFront ? this.frontPeakSlip : this.rearPeakSlip;
    const past = (slip - peakSlip) / ((alarm - 1) * peakSlip);
    const given = past <= 0 ? 1 : past >= 1 ? 0.5 : 1 - past * past * (1.5 - past);
    const turning = slowing / (wheel.perInertia * wheel.radius) - wheel.engineDrag;
    const torque = given * (this.share * wheel.radius * peak + turning);
    const pressure = wheel.pushOut + Math.max(0, torque) / (wheel.gain * rubbing);
    return isFront ? pressure : line.frontFor(pressure);
  }
}
