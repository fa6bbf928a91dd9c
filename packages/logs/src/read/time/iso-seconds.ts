import { dayNumber } from './civil-day.ts';

const shape = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2}):(\d{2}(?:\.\d+)?)Z$/;

/**
 * The moment of an ISO 8601 date and time in UTC, as the epoch of a log is written.
 *
 * @param text - such as `2026-05-09T10:00:00.000Z`; 1
 * @returns s since 1970-01-01; null where the text is no such time
 * @example
 * isoSeconds('1970-01-02T00:00:00.500Z') // => 86400.5
 */
export function isoSeconds(text: string): number | null {
  const parts = shape.exec(text)?.slice(1).map(Number);
  if (parts === undefined) return null;
  const [year = NaN, month = NaN, day = NaN, hours = NaN, minutes = NaN, seconds = NaN] = parts;
  return 86_400 * dayNumber(year, month, day) + 3600 * hours + 60 * minutes + seconds;
}
