import { describe, expect, test } from 'vitest';
import { dateOfDay, dayNumber } from './civil-day.ts';
import { clockSeconds } from './clock-seconds.ts';
import { isoText, timeOfDayText } from './clock-text.ts';
import { isoSeconds } from './iso-seconds.ts';

describe('days and clocks without a clock', () => {
  test('day numbers agree with the calendar of the language', () => {
    for (let day = -200_000; day < 200_000; day += 97) {
      const date = new Date(day * 86_400_000);
      expect(dateOfDay(day)).toBe(date.toISOString().slice(0, day < -719_162 ? 13 : 10));
      expect(dayNumber(date.getUTCFullYear(), date.getUTCMonth() + 1, date.getUTCDate())).toBe(day);
    }
  });

  test('texts', () => {
    expect(isoText(1_772_366_400.25)).toBe('2026-03-01T12:00:00.250Z');
    expect(isoSeconds('2026-03-01T12:00:00.250Z')).toBe(1_772_366_400.25);
    expect([isoSeconds('2026-03-01 12:00'), isoSeconds('')]).toEqual([null, null]);
    expect(timeOfDayText(86_399.9999)).toBe('23:59:59.999');
    expect(timeOfDayText(90_061.5)).toBe('01:01:01.500');
  });

  test.each([
    ['2026-03-01T12:00:00Z', 'date-time', 1_772_366_400],
    ['2026-03-01 14:00:00,5+02:00', 'date-time', 1_772_366_400.5],
    ['2026-03-01T12:00', 'date-time', 1_772_366_400],
    ['1:02:03', 'time-of-day', 3723],
    ['12:00:00 AM', 'time-of-day', 0],
    ['12:30:00 pm', 'time-of-day', 45_000],
    ['2:03.5', 'minutes-seconds', 123.5],
    ['25:00:00', 'time-of-day', NaN],
    ['2026-13-01T12:00:00', 'date-time', NaN],
  ] as const)('%s', (text, shape, seconds) => expect(clockSeconds(text, shape)).toBe(seconds));
});
