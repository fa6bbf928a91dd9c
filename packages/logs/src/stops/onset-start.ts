/** The beginning of a stop, however it was found. */
export interface OnsetStart {
  /** s. */
  readonly time: number;
  /** Index of the sample at which the fitted beginning ends and the samples themselves go on. */
  readonly joins: number;
  /** m/s, standard deviation of a sample. */
  readonly noise: number;
  /** By how much neighboring errors hang together: variance of a mean against that of independent errors. */
  readonly correlation: number;
  /** The part from a start, in s, to the sample `joins`; null starts at the onset itself. */
  readonly from: (start: number | null) => FittedPart;
}

/** The beginning of a stop as far as it is fitted. */
export interface FittedPart {
  /** m/s at the start. */
  readonly entrySpeed: number;
  /** m. */
  readonly distance: number;
  /** m, standard error of `distance`. */
  readonly standardError: number;
}
