/** An interval, low end first, in the unit of the quantity. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}
