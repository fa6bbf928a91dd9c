import { dayNumber } from '../time/civil-day.ts';

const timeOfDay = /^(\d{2})(\d{2})(\d{2}(?:\.\d+)?)$/;

/** s since midnight UTC of a field 'hhmmss.sss'; NaN where it is empty or impossible. */
export function utcSeconds(field: string): number {
  const parts = timeOfDay.exec(field);
  if (parts === null) return NaN;
  const [hour, minute, second] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  return hour < 24 && minute < 60 && second < 61 ? hour * 3600 + minute * 60 + second : NaN;
}

/** Days since 1970-01-01 of a field 'ddmmyy' (80 to 99 are the 1900s); NaN where it is empty or impossible. */
export function shortDate(field: string): number {
  if (!/^\d{6}$/.test(field)) return NaN;
  const year = Number(field.slice(4));
  return checkedDay(year + (year < 80 ? 2000 : 1900), Number(field.slice(2, 4)), Number(field.slice(0, 2)));
}

/** Days since 1970-01-01 of day, month and year fields; NaN where one is empty or impossible. */
export function longDate(day: string, month: string, year: string): number {
  if (!/^\d{4}$/.test(year) || !/^\d{1,2}$/.test(month) || !/^\d{1,2}$/.test(day)) return NaN;
  return checkedDay(Number(year), Number(month), Number(day));
}

function checkedDay(year: number, month: number, day: number): number {
  return month >= 1 && month <= 12 && day >= 1 && day <= 31 ? dayNumber(year, month, day) : NaN;
}
