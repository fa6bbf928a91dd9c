import { dateOfDay } from './civil-day.ts';

const secondsOfDay = 86_400;

/** Seconds since midnight (any day) as 'HH:MM:SS.mmm'. */
export function timeOfDayText(seconds: number): string {
  const wrapped = ((seconds % secondsOfDay) + secondsOfDay) % secondsOfDay;
  const milliseconds = Math.min(Math.round(wrapped * 1000), secondsOfDay * 1000 - 1);
  const part = (unit: number, count: number): string =>
    String(Math.floor(milliseconds / unit) % count).padStart(2, '0');
  const fraction = String(milliseconds % 1000).padStart(3, '0');
  return `${part(3_600_000, 24)}:${part(60_000, 60)}:${part(1000, 60)}.${fraction}`;
}

/** Seconds since 1970-01-01 as ISO 8601 in UTC with milliseconds. */
export function isoText(secondsSince1970: number): string {
  const day = Math.floor(secondsSince1970 / secondsOfDay);
  return `${dateOfDay(day)}T${timeOfDayText(secondsSince1970 - day * secondsOfDay)}Z`;
}
