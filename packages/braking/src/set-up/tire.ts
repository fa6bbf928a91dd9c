/** One tire of an axle on a dry road of surface factor 1. */
export interface Tire {
  /** μ_0, peak longitudinal friction at the nominal load, 1. */
  readonly peakFriction: number;
  /** F_z0, N, load at which the peak friction holds. */
  readonly nominalLoad: number;
  /** n, exponent of μ = μ_0 (F_z / F_z0)^-n, 1; 0 is no load sensitivity. */
  readonly loadSensitivity: number;
  /** μ_slide / μ_peak, 1. */
  readonly slideRatio: number;
  /** κ_p, slip at the peak, 1. */
  readonly peakSlip: number;
  /** C_κ / F_peak, slip stiffness over peak force, 1 (per unit slip). */
  readonly slipStiffness: number;
  /** σ, m, relaxation length: how far the tire rolls until its force has followed the slip to 63 %. */
  readonly relaxationLength: number;
  /** m, tread left; 8 mm is new, 1.6 mm worn out. It matters on water alone. */
  readonly treadDepth: number;
  /** r, m, rolling radius; also the arm of the brake force. */
  readonly rollingRadius: number;
}
