/** A fall of the speed to rest that is no stop that could be measured, and why. */
export interface RejectedStop {
  readonly code: 'start-not-in-log' | 'sample-jump';
  /** s on the table's time base, where it ends. */
  readonly time: number;
  /** Time of day or ISO time where the source gives one. */
  readonly clock: string | null;
  /** One sentence for a person. */
  readonly reason: string;
}
