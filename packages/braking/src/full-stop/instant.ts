/** Figures of the whole car in one instant, beside its state. */
export const instant = {
  /** t, s, of the instant; to be set before `slopes`. */
  time: 0,
  /** N against the motion. */
  air: 1,
  rolling: 2,
  /** Pa asked of the front outlet of the master cylinder. */
  asked: 3,
  /** m/s² of the center of gravity, positive while slowing. */
  deceleration: 4,
} as const;

/** Figures of one instant. */
export const instantSize = 5;
