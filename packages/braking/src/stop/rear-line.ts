import { requireRange } from '@standstill/numerics';
import { masterCylinderGains } from '../foot-to-pressure/master-cylinder-gains.ts';
import type { SetUp } from '../set-up/set-up.ts';

/**
 * How the rear line pressure follows the front one: straight up to the valve's knee, flatter after it. The same as
 * `pressuresFromMasterForce` with the master cylinder force eliminated.
 *
 * Equation: p_in = ρ p_f; p_r = p_in up to the knee p_k, p_k + s (p_in − p_k) above it; ρ = rear over front gain of the
 * master cylinder.
 * Source: [gillespie]
 */
export class RearLine {
  #ratio = 1;
  #knee = Infinity;
  #slope = 1;

  /** Takes on a set-up. */
  follow({ masterCylinder, rearValve }: SetUp): void {
    const gains = masterCylinderGains(masterCylinder);
    this.#ratio = gains.rear / gains.front;
    const valved = rearValve.kind === 'proportioning';
    this.#knee = valved
      ? requireRange('proportioning knee pressure', rearValve.kneePressure, 'Pa', 0, 60e6)
      : Infinity;
    this.#slope = valved ? requireRange('proportioning slope', rearValve.slope, '', 0, 1) : 1;
  }

  /** Pa at the rear for Pa at the front. */
  rearAt(frontPressure: number): number {
    const inlet = this.#ratio * frontPressure;
    return inlet <= this.#knee ? inlet : this.#knee + this.#slope * (inlet - this.#knee);
  }

  /** Pa of rear rise per Pa of front rise. */
  slopeAt(frontPressure: number): number {
    return this.#ratio * frontPressure <= this.#knee ? this.#ratio : this.#ratio * this.#slope;
  }

  /** Pa at the front for Pa at the rear; Infinity where the valve never lets that through. */
  frontFor(rearPressure: number): number {
    if (rearPressure <= this.#knee) return rearPressure / this.#ratio;
    return (this.#knee + (rearPressure - this.#knee) / this.#slope) / this.#ratio;
  }
}
