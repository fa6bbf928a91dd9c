/** How a moment is written. */
export type ClockShape = 'time-of-day' | 'minutes-seconds' | 'date-time';

const timeOfDay = /^\s*\d{1,2}:\d{2}:\d{2}(?:[.,]\d+)?\s*(?:[AaPp][Mm])?\s*$/;
const minutesSeconds = /^\s*\d{1,4}:\d{2}(?:[.,]\d+)?\s*$/;
const dateTime =
  /^\s*\d{4}[-/]\d{2}[-/]\d{2}[T ]\d{2}:\d{2}(?::\d{2}(?:[.,]\d+)?)?\s*(?:Z|[+-]\d{2}:?\d{2})?\s*$/;

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
  if (timeOfDay.test(text)) return 'time-of-day';
  if (dateTime.test(text)) return 'date-time';
  return minutesSeconds.test(text) ? 'minutes-seconds' : null;
}
