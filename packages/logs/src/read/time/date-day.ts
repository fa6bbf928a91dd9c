import { dayNumber } from './civil-day.ts';

/** Which of two small numbers of a date is the day; dates that begin with the year or are written with dots say it themselves. */
export type DateOrder = 'day-first' | 'month-first';

const yearFirst = /^(\d{4})([-/.]?)(\d{2})\2(\d{2})$/;
const dotted = /^(\d{1,2})\.(\d{1,2})\.(\d{4})$/;
const ambiguous = /^(\d{1,2})([-/])(\d{1,2})\2(\d{4})$/;
const monthLengths = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * The day that a date names.
 *
 * @param text - '2026-03-01', '20260301', '1.3.2026', or '3/1/2026' where the order is known
 * @param order - which number is the day where the date itself does not say
 * @returns days since 1970-01-01; NaN where it is no date or its order is not known
 * @example
 * dateDay('1.3.2026', null) // => 20513
 */
export function dateDay(text: string, order: DateOrder | null): number {
  const date = text.trim();
  const iso = yearFirst.exec(date);
  if (iso !== null) return dayOf(Number(iso[1]), Number(iso[3]), Number(iso[4]));
  const german = dotted.exec(date);
  if (german !== null) return dayOf(Number(german[3]), Number(german[2]), Number(german[1]));
  const parts = ambiguous.exec(date);
  if (parts === null || order === null) return NaN;
  const [first, second, year] = [Number(parts[1]), Number(parts[3]), Number(parts[4])];
  return order === 'day-first' ? dayOf(year, second, first) : dayOf(year, first, second);
}

/**
 * Whether a text is written like a date, in whatever order.
 *
 * @param text - the text
 */
export function isDate(text: string): boolean {
  const date = text.trim();
  return yearFirst.test(date) || dotted.test(date) || ambiguous.test(date);
}

/**
 * The order of day and month, from dates in which one of the two is over 12.
 *
 * @param dates - dates of one column
 * @returns the order; null where no date or not all of them tell it
 */
export function dateOrder(dates: readonly string[]): DateOrder | null {
  const parts = dates.map((text) => ambiguous.exec(text.trim())).filter((found) => found !== null);
  const dayFirst = parts.some((found) => Number(found[1]) > 12);
  const monthFirst = parts.some((found) => Number(found[3]) > 12);
  return dayFirst === monthFirst ? null : dayFirst ? 'day-first' : 'month-first';
}

function dayOf(year: number, month: number, day: number): number {
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const longest = month === 2 && !isLeap ? 28 : (monthLengths[month - 1] ?? 0);
  return day >= 1 && day <= longest ? dayNumber(year, month, day) : NaN;
}
