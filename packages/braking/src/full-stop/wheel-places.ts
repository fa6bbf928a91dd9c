/**
 * Where each figure of a wheel stands in the table of wheels: what the wheel is, what its control has set, and what it did
 * where the slopes were last taken. One table instead of twenty: the right-hand side of the full stop is evaluated ten
 * thousand times a stop, and each array that it touches costs a check.
 */
export const figure = {
  /** 1, part of the axle's load. */
  loadShare: 0,
  /** r, m. */
  radius: 1,
  /** 1/J, 1/(kg m²). */
  perInertia: 2,
  /** 1/σ, 1/m. */
  perRelaxation: 3,
  /** N m per Pa above push-out at pad friction 1. */
  gain: 4,
  /** p_0, Pa. */
  pushOut: 5,
  /** N m, engine drag on the wheel while it turns. */
  engineDrag: 6,
  /** s and e of F_peak = s F_z^e; N^(1 − e) and 1. */
  peakScale: 7,
  peakExponent: 8,
  /** 1/s, how quickly the caliper follows its line. */
  quickness: 9,
  /** The load, N, around which the power law is carried by its series, and its peak force there, N. */
  anchorLoad: 10,
  anchorPeak: 11,
  /** μ of the pads, 1, when it was last looked up, and its change, 1/s. */
  friction: 12,
  frictionRate: 13,
  /** What the valve does, by `valve`, and Pa/s of a slow build-up. */
  mode: 14,
  buildRate: 15,
  /** N on the road; N that the tire could give and gives; N m of the brake. */
  load: 16,
  peak: 17,
  force: 18,
  torque: 19,
} as const;

/** Figures of one wheel. */
export const wheelStride = 20;
