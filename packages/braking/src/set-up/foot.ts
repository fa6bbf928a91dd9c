/** What the foot does: a force that rises in a straight line and is then held. */
export interface Foot {
  /** N at the pedal pad. */
  readonly force: number;
  /** s from first touch to the held force. */
  readonly rampTime: number;
}
