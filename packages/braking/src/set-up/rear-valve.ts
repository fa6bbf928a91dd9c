/** How rear line pressure follows front line pressure. */
export type RearValve = NoRearValve | ProportioningValve;

export interface NoRearValve {
  readonly kind: 'none';
}

/** Rear equals front up to the knee, then rises with `slope`. */
export interface ProportioningValve {
  readonly kind: 'proportioning';
  /** p_k, Pa. */
  readonly kneePressure: number;
  /** 1, rear rise over front rise above the knee, 0 to 1. */
  readonly slope: number;
}
