import type { FixRow } from './fix-rows.ts';

const daySeconds = 86_400;

/** Counts days along a log whose sentences tell the time of day always and the date sometimes. */
export interface DayKeeper {
  /** s from midnight UTC of the log's first day. */
  readonly secondsOf: (row: FixRow) => number;
  /** Whether any sentence told the date. */
  readonly isKnown: () => boolean;
  /** s from 1970-01-01 to midnight of the first day; 0 where no date is known. */
  readonly baseSeconds: () => number;
}

/**
 * Keeps the day of a log. A dated moment sets it (a void one doesn't: receivers without a fix make dates up); an undated one stays on the day of the moment before, or on the
 * next where its time of day is more than twelve hours earlier. Moments before the first date are placed by it later.
 *
 * @returns a keeper that is handed the moments in order
 */
export function dayKeeper(): DayKeeper {
  let day = 0;
  let last = -Infinity;
  let firstDay = NaN;
  return {
    secondsOf: (row) => {
      if (row.seconds < last - daySeconds / 2) day += 1;
      if (!row.isVoid && !Number.isNaN(row.day)) {
        if (Number.isNaN(firstDay)) firstDay = row.day - day;
        day = row.day - firstDay;
      }
      last = row.seconds;
      return day * daySeconds + row.seconds;
    },
    isKnown: () => !Number.isNaN(firstDay),
    baseSeconds: () => (Number.isNaN(firstDay) ? 0 : firstDay * daySeconds),
  };
}
