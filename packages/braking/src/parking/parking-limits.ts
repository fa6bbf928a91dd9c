/**
 * What FMVSS 135 S7.12 asks of a parking brake, both ways for five minutes, at full load.
 *
 * Source: [fmvss-135]
 */
export const parkingLimits = {
  /** Rise over run, 1. */
  grade: 0.2,
  /** N. */
  handForce: 400,
  /** N. */
  footForce: 500,
} as const;
