/** One unit: how it is written and what it is in SI (°C for temperatures). */
export interface Unit {
  /** How it is printed, for example 'lbf·ft'. */
  readonly symbol: string;
  /** SI value = (number - zero) × times / over; kept as two numbers so that 355.6 mm is exactly 0.3556 m. */
  readonly times: number;
  readonly over: number;
  /** The number in this unit at which the SI value is zero; 0 but for temperatures. */
  readonly zero: number;
  /** Other ways to write it; spacing, dots, hyphens, brackets and raised digits do not matter (`spellingKey`). */
  readonly spellings: readonly string[];
}
