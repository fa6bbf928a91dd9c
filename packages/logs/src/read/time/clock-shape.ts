import { isDate } from './date-day.ts';

/** How a moment is written. */
export type ClockShape = 'time-of-day' | 'minutes-seconds' | 'date-time';

const timeOfDay = /^\d{1,2}:\d{2}:\d{2}(?:[.,]\d+)?\s*(?:[AaPp]\.?[Mm]\.?)?$/;
const minutesSeconds = /^\d{1,4}:\d{2}(?:[.,]\d+)?$/;
/** What stands behind a date: the seconds may be missing, a zone may follow. */
const timeOfDate =
  /^\d{1,2}:\d{2}(?::\d{2}(?:[.,]\d+)?)?\s*(?:[AaPp]\.?[Mm]\.?)?\s*(?:Z|UTC|[+-]\d{2}(?::?\d{2})?)?$/;

/**
 * Which kind of clock reading a field is, if it is one.
 *
 * @param text - the field
 * @returns the kind; null where it is none
 * @example
 * clockShape('07:48:32.490') // => 'time-of-day'
 */
export function clockShape(text: string): ClockShape | null {
  if (!text.includes(':')) return null;
  const trimmed = text.trim();
  if (timeOfDay.test(trimmed)) return 'time-of-day';
  if (minutesSeconds.test(trimmed)) return 'minutes-seconds';
  const { date, time } = dateAndTime(trimmed);
  return date !== '' && isDate(date) && timeOfDate.test(time) ? 'date-time' : null;
}

/**
 * Takes a moment apart at the T or blank between its date and its time.
 *
 * @param text - the moment
 * @returns the two; no date where there is no such sign
 */
export function dateAndTime(text: string): { readonly date: string; readonly time: string } {
  const at = text.search(/[T\s]/);
  return at < 0 ? { date: '', time: text } : { date: text.slice(0, at), time: text.slice(at + 1).trim() };
}
