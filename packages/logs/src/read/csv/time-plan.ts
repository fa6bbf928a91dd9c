import type { ClockShape } from '../time/clock-shape.ts';
import type { DateOrder } from '../time/date-day.ts';

/** How the time column is read. */
export type TimePlan =
  | {
      readonly kind: 'clock';
      readonly index: number;
      readonly shape: ClockShape;
      /** Index of a column of dates beside a column of times of day; -1 where there is none. */
      readonly dateIndex: number;
      /** Which number of a date is the day where the date itself does not say. */
      readonly order: DateOrder | null;
      /** A date stands in the field that can't be read; only the time behind it is. */
      readonly skipsDate: boolean;
      /** No zone is named, so that the clock may be a local one. */
      readonly isLocal: boolean;
    }
  | {
      readonly kind: 'number';
      readonly index: number;
      /** s for 1 in the column. */
      readonly factor: number;
      /** Whether the numbers count from 1970-01-01. */
      readonly sinceEpoch: boolean;
    };
