/** How well a class value is known: the same words as the table of sources. */
export type HowKnown = 'read' | 'from memory' | 'common practice' | 'assumed';

/** A value that stands for a whole class of parts, never for one part. */
export interface ClassValue {
  /** In the SI unit of the field. */
  readonly value: number;
  /** One standard deviation over the class, in the unit of the value. */
  readonly spread: number;
  readonly known: HowKnown;
  /** Where it comes from and what it leaves out. */
  readonly note: string;
}

/** A table that stands for a whole class of parts; its points move up and down together. */
export interface ClassCurve {
  /** In the SI unit of the field, one for each point. */
  readonly values: readonly number[];
  /** One standard deviation of ONE factor on the whole curve, 1. */
  readonly factorSpread: number;
  readonly known: HowKnown;
  readonly note: string;
}
