/** How far from the last load the power law is carried by its series, relative. */
const reach = 0.03;

/**
 * The peak force of four tires over their loads, by a series around a load nearby that is renewed when the load has moved
 * away from it.
 *
 * Equation: F_peak = s F_z^e = F_a (1 + e d (1 + (e − 1) d / 2 (1 + (e − 2) d / 3))), d = (F_z − F_za) / F_za.
 * Assumes: |d| up to 0.03, where the series is off by less than 2e-8.
 * Source: [power-law-load]
 */
export class PeakForce {
  /** N^(1 − e) and 1, of each wheel. */
  readonly scales = new Float64Array(4);
  readonly exponents = new Float64Array(4);
  readonly #anchorLoads = new Float64Array(4);
  readonly #anchorPeaks = new Float64Array(4);

  /** Forgets the loads of an earlier stop. */
  clear(): void {
    this.#anchorLoads.fill(1e-9);
  }

  /** N that one tire can give at a load, N. */
  at(wheel: number, load: number): number {
    const anchor = this.#anchorLoads[wheel]!;
    const off = (load - anchor) / anchor;
    const e = this.exponents[wheel]!;
    if (off < reach && off > -reach)
      return this.#anchorPeaks[wheel]! * (1 + e * off * (1 + (e - 1) * off * (0.5 + ((e - 2) / 6) * off)));
    if (load < 1) return load > 0 ? this.scales[wheel]! * Math.pow(load, e) : 0;
    const peak = this.scales[wheel]! * Math.pow(load, e);
    this.#anchorLoads[wheel] = load;
    this.#anchorPeaks[wheel] = peak;
    return peak;
  }
}
