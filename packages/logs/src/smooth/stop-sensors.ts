/** Readings of one sensor around a stop. */
export interface SensorReadings {
  /** s, ascending, on the log's time base. */
  readonly time: Float64Array;
  /** SI. */
  readonly values: Float64Array;
  /** One standard deviation of an error that is new with every reading. */
  readonly noise: number;
}

/** What the sensors of a log say around one stop. Times are of the logger's clock unless said otherwise. */
export interface StopSensors {
  /** s, where the motion is followed from and to. */
  readonly from: number;
  readonly to: number;
  /** s, from where the motion is wanted by hindsight. */
  readonly shownFrom: number;
  /** s, where the distance begins. */
  readonly start: number;
  /** s, within which the brake is applied and the deceleration builds up. */
  readonly application: { readonly from: number; readonly to: number };
  /** s, between which the car comes to rest; after it the car stands. */
  readonly rest: { readonly from: number; readonly to: number };
  /** s, how late speed and position are written against the logger's clock, and one standard error. */
  readonly latency: { readonly value: number; readonly standardError: number };
  /** m/s; `wander` is one standard deviation of its slowly wandering error. */
  readonly speed: SensorReadings & { readonly wander: number };
  /** m/s², forward positive. */
  readonly acceleration: (SensorReadings & { readonly bias: number; readonly biasSpread: number }) | null;
  /** m along the line of the stop. */
  readonly position: SensorReadings | null;
  /** m/s, scaled to the speed. */
  readonly wheels: SensorReadings | null;
}
