import { dayNumber } from './civil-day.ts';
import type { ClockShape } from './clock-shape.ts';

const dateTime =
  /^\s*(\d{4})[-/](\d{2})[-/](\d{2})[T ](\d{2}):(\d{2})(?::(\d{2}(?:[.,]\d+)?))?\s*(Z|[+-]\d{2}:?\d{2})?\s*$/;
const timeOfDay = /^\s*(\d{1,2}):(\d{2}):(\d{2}(?:[.,]\d+)?)\s*([AaPp][Mm])?\s*$/;
const minutesSeconds = /^\s*(\d{1,4}):(\d{2}(?:[.,]\d+)?)\s*$/;

/**
 * Seconds of a clock reading: since midnight for a time of day, since 1970-01-01 UTC for a date and time (one that
 * names no zone is taken as it stands), since zero for minutes and seconds.
 *
 * @param text - the field
 * @param shape - how the column writes its moments
 * @returns s; NaN where the field is no such reading or names an impossible hour, minute, second, day or month
 * @example
 * clockSeconds('07:48:32.5', 'time-of-day') // => 28112.5
 */
export function clockSeconds(text: string, shape: ClockShape): number {
  if (shape === 'time-of-day') return secondsOfDay(timeOfDay.exec(text));
  if (shape === 'minutes-seconds') return secondsOfMinutes(minutesSeconds.exec(text));
  return secondsOfDate(dateTime.exec(text));
}

function secondsOfDay(parts: RegExpExecArray | null): number {
  if (parts === null) return NaN;
  const half = parts[4]?.toLowerCase();
  const hour = half === undefined ? Number(parts[1]) : (Number(parts[1]) % 12) + (half === 'pm' ? 12 : 0);
  return joined(hour, Number(parts[2]), seconds(parts[3]!));
}

function secondsOfMinutes(parts: RegExpExecArray | null): number {
  if (parts === null) return NaN;
  const second = seconds(parts[2]!);
  return second < 60 ? Number(parts[1]) * 60 + second : NaN;
}

function secondsOfDate(parts: RegExpExecArray | null): number {
  if (parts === null) return NaN;
  const [year, month, day] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  if (month < 1 || month > 12 || day < 1 || day > 31) return NaN;
  const clock = joined(Number(parts[4]), Number(parts[5]), parts[6] === undefined ? 0 : seconds(parts[6]));
  return dayNumber(year, month, day) * 86_400 + clock - zoneSeconds(parts[7]);
}

function zoneSeconds(zone: string | undefined): number {
  if (zone === undefined || zone === 'Z') return 0;
  const digits = zone.replace(':', '');
  const size = Number(digits.slice(1, 3)) * 3600 + Number(digits.slice(3, 5)) * 60;
  return digits.startsWith('-') ? -size : size;
}

/** A leap second is let through as the second that it is. */
function joined(hour: number, minute: number, second: number): number {
  return hour < 24 && minute < 60 && second < 61 ? hour * 3600 + minute * 60 + second : NaN;
}

function seconds(text: string): number {
  return Number(text.replace(',', '.'));
}
