import { dateAndTime, type ClockShape } from './clock-shape.ts';
import { dateDay, type DateOrder } from './date-day.ts';

const clock =
  /^\s*(\d{1,2}):(\d{2})(?::(\d{2}(?:[.,]\d+)?))?\s*([AaPp]\.?[Mm]\.?)?\s*(Z|UTC|[+-]\d{2}(?::?\d{2})?)?\s*$/;
const minutesSeconds = /^\s*(\d{1,4}):(\d{2}(?:[.,]\d+)?)\s*$/;

/**
 * Seconds of a clock reading: since midnight for a time of day, since 1970-01-01 UTC for a date and time (one that
 * names no zone is taken as it stands), since zero for minutes and seconds.
 *
 * @param text - the field
 * @param shape - how the column writes its moments
 * @param order - which number of a date is the day where the date itself does not say
 * @returns s; NaN where the field is no such reading or names an impossible hour, minute, second, day or month
 * @example
 * clockSeconds('07:48:32.5', 'time-of-day') // => 28112.5
 */
export function clockSeconds(text: string, shape: ClockShape, order: DateOrder | null = null): number {
  if (shape === 'minutes-seconds') return secondsOfMinutes(minutesSeconds.exec(text));
  if (shape === 'time-of-day') return secondsOfDay(clock.exec(text), false);
  const { date, time } = dateAndTime(text.trim());
  return dateDay(date, order) * 86_400 + secondsOfDay(clock.exec(time), true);
}

/** Whether a clock reading names its zone. */
export function namesZone(text: string): boolean {
  return clock.exec(dateAndTime(text.trim()).time)?.[5] !== undefined;
}

function secondsOfDay(parts: RegExpExecArray | null, isDated: boolean): number {
  if (parts === null || (!isDated && (parts[3] === undefined || parts[5] !== undefined))) return NaN;
  const half = parts[4]?.[0]?.toLowerCase();
  const written = Number(parts[1]);
  if (half !== undefined && (written < 1 || written > 12)) return NaN;
  const hour = half === undefined ? written : (written % 12) + (half === 'p' ? 12 : 0);
  const second = parts[3] === undefined ? 0 : seconds(parts[3]);
  return joined(hour, Number(parts[2]), second) - zoneSeconds(parts[5]);
}

function secondsOfMinutes(parts: RegExpExecArray | null): number {
  if (parts === null) return NaN;
  const second = seconds(parts[2]!);
  return second < 60 ? Number(parts[1]) * 60 + second : NaN;
}

function zoneSeconds(zone: string | undefined): number {
  if (zone === undefined || zone === 'Z' || zone === 'UTC') return 0;
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
