/**
 * Where each figure of a full stop stands in its state vector. Wheels are front-left, front-right, rear-left, rear-right,
 * each group of four in that order.
 */
export const place = {
  /** v, m/s, of the center of gravity. */
  speed: 0,
  /** s, m, driven by the wheels. */
  distance: 1,
  /** x, m/s²: the deceleration whose steady pitch the body has now. */
  pitch: 2,
  /** dx/dt, m/s³. */
  pitchRate: 3,
  /** p_m, Pa, front outlet of the master cylinder. */
  master: 4,
  /** F_p, N, of a foot that seeks a deceleration. */
  foot: 5,
  /** ω, rad/s. */
  wheel: 6,
  /** κ, 1, slip that the tire's force has followed. */
  slip: 10,
  /** p, Pa, at the caliper. */
  pressure: 14,
} as const;

/** Figures in the state vector. */
export const stateSize = 18;
