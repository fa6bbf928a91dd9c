/** The pedal and its mounting. */
export interface Pedal {
  /** i_p, pad travel over push-rod travel, 1. */
  readonly ratio: number;
  /** η_p, 1. */
  readonly efficiency: number;
  /** s_0, m at the pedal pad: free play and dead stroke before the master cylinder builds pressure. */
  readonly freePlay: number;
  /** m/N at the pedal pad: pedal box and bulkhead flex. */
  readonly flex: number;
  /** m at the pedal pad until it meets the floor or the cylinder bottoms, whichever is known. */
  readonly availableTravel: number;
}
