/** Why draws of one set-up gave no distance. */
export interface DrawTroubles {
  /** Draws in which the car does not come to rest. */
  readonly noRest: number;
  /** Draws outside what the formulas are valid for. */
  readonly outOfRange: number;
  /** The first such refusal, with quantity, value and accepted range. */
  readonly refusal: string | null;
}

/** The answers to some draws. All of its arrays may be handed over to another thread. */
export interface DrawnRange {
  /** First draw in it, and first draw after it. */
  readonly from: number;
  readonly to: number;
  /**
   * One array for each set-up: figure after figure, each with a number for every draw; NaN in a draw in which any of the
   * set-ups came out impossible or did not stop.
   */
  readonly bySetUp: readonly Float64Array[];
  /** In the order of the set-ups. */
  readonly troubles: readonly DrawTroubles[];
  /** Draws that are NaN. */
  readonly dropped: number;
}
