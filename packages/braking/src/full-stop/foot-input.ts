/** A force that rises in a straight line and is then held. */
export interface RampFoot {
  readonly kind: 'ramp';
  /** N at the pedal pad. */
  readonly force: number;
  /** s from first touch to the held force. */
  readonly rampTime: number;
}

/** A recorded force; straight lines between its points, the last one held. */
export interface TraceFoot {
  readonly kind: 'trace';
  /** s from the first touch, ascending, the first 0. */
  readonly times: ArrayLike<number>;
  /** N at the pedal pad at those times. */
  readonly forces: ArrayLike<number>;
}

/** A foot that seeks a deceleration: it presses harder while the car slows less than wanted. */
export interface DecelerationFoot {
  readonly kind: 'deceleration';
  /** a, m/s², wanted. */
  readonly deceleration: number;
  /** s over which the wanted deceleration rises from nothing. */
  readonly rampTime: number;
  /** N at the pedal pad, the most that the foot gives. */
  readonly greatestForce: number;
}

/** What the foot does in a full stop. */
export type FootInput = RampFoot | TraceFoot | DecelerationFoot;
