import type { LogIssue } from './log-issue.ts';

/** What a channel measures. `unknown` channels are kept as read and never used in arithmetic. */
export type ChannelQuantity =
  | 'speed'
  | 'wheel-speed'
  | 'acceleration-forward'
  | 'acceleration-lateral'
  | 'acceleration-vertical'
  | 'latitude'
  | 'longitude'
  | 'altitude'
  | 'heading'
  | 'distance'
  | 'brake-switch'
  | 'brake-pressure'
  | 'pedal-force'
  | 'pedal-travel'
  | 'temperature'
  | 'fix-quality'
  | 'unknown';

/** One measured column: SI values on the table's time base, gaps as NaN. */
export interface Channel {
  /** As the source calls it. */
  readonly name: string;
  readonly quantity: ChannelQuantity;
  /** Unit as found in the source ('km/h', 'kn', ''), before conversion to SI. */
  readonly unitAsRead: string;
  /** How the unit was known. `assumed` units must be shown to the person before a result is believed. */
  readonly unitOrigin: 'header' | 'format' | 'given' | 'assumed' | 'none';
  readonly values: Float64Array;
  /** Who said what the channel is: the format, a guess from its heading, or a person. */
  readonly chosenBy: 'format' | 'guess' | 'person';
}

/** The source's clock: one offset a segment, because the clock may jump back between two of them. */
export interface SourceClock {
  readonly kind: 'date-time' | 'time-of-day';
  /** s to add to `time` in each segment: seconds since 1970-01-01 (`date-time`) or since midnight (`time-of-day`). */
  readonly offsets: readonly number[];
}

/**
 * The one currency for measured data. `time` is s on one ascending base; where the source's clock jumps back or a gap
 * opens, a new segment starts and nothing is computed across the seam.
 */
export interface ChannelTable {
  readonly time: Float64Array;
  readonly channels: readonly Channel[];
  /** Index of the first row of each segment, ascending, starting with 0. */
  readonly segmentStarts: readonly number[];
  /** ISO date-time of `time` = 0 where the source gives one. */
  readonly epoch: string | null;
  /** How `time` maps to the source's own clock; absent where the source only counts seconds. */
  readonly clock?: SourceClock;
  /** The headings in one line, by which a remembered choice of columns is found again; null where there are none. */
  readonly headings: string | null;
  readonly source: {
    readonly name: string;
    readonly format: string;
    readonly bytes: number;
    readonly rows: number;
  };
  readonly issues: readonly LogIssue[];
}
