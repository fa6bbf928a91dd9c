/** How far single stops of one set-up scatter, and how that is known. */
export type PlannedSpread =
  | {
      readonly origin: 'measured';
      /** m. */
      readonly standardDeviation: number;
      /** Stops that it was measured from, less the sets that they belong to; 1 at least. */
      readonly degreesOfFreedom: number;
    }
  | {
      readonly origin: 'stated' | 'assumed';
      /** m. */
      readonly standardDeviation: number;
    };

export interface PlanInput {
  /** m, the difference that should show. */
  readonly resolution: number;
  readonly spread: PlannedSpread;
  /** Chance to see a difference of that size; 0.8 where absent. */
  readonly power?: number;
  /** Chance of a false alarm, two-sided; 0.05 where absent. */
  readonly level?: number;
  /** What takes the drift out; `none` where absent. */
  readonly control?: 'none' | 'repeat' | 'reference-car';
}

/** Runs that show a difference. Null runs: more than a million. */
export interface RunsPlan {
  readonly resolution: number;
  /** m. */
  readonly spread: number;
  readonly spreadOrigin: PlannedSpread['origin'];
  /** m, 95 %, from the stops that it was measured from; the spread itself twice where it was not measured. */
  readonly spreadInterval: { readonly low: number; readonly high: number };
  readonly power: number;
  readonly level: number;
  readonly control: 'none' | 'repeat' | 'reference-car';
  /** Counted runs in each set, four at least, even so that as many go out as back. */
  readonly runsPerSet: number | null;
  /** The same for the low and the high end of what the spread may be. */
  readonly runsPerSetRange: { readonly low: number | null; readonly high: number | null };
  /** m, what `runsPerSet` runs do show with the same chance; null where there is no such number. */
  readonly shows: number | null;
}
