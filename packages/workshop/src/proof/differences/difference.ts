/** What may be different between two sets besides the set-up. */
export type DifferenceKey =
  | 'date'
  | 'tires'
  | 'surface'
  | 'driver'
  | 'logger'
  | 'direction'
  | 'headWind'
  | 'surfaceTemperature'
  | 'tireTemperature'
  | 'airTemperature'
  | 'startTemperature'
  | 'start-signal'
  | 'sample-rate'
  | 'stated';

/** Something that was different besides the set-up, and so can't be told from it. */
export interface Difference {
  /** `stated` where a person only gave a text. */
  readonly key: DifferenceKey;
  /** Begins with its kind: `tires: old before, new after`. */
  readonly text: string;
  /** Set where a person gave the text, and neither runs nor logs told it. */
  readonly isGiven?: true;
}
