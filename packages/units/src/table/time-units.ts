import { defineUnit } from './define-unit.ts';

/** Times; the year is the Julian one of 365.25 days and the month its twelfth. */
export const timeUnits = {
  s: defineUnit('s', 1, 1, 'sec', 'secs', 'second', 'seconds'),
  ms: defineUnit('ms', 1, 1000, 'msec', 'millisecond', 'milliseconds'),
  min: defineUnit('min', 60, 1, 'mins', 'minute', 'minutes'),
  h: defineUnit('h', 3600, 1, 'hr', 'hrs', 'hour', 'hours'),
  day: defineUnit('day', 86_400, 1, 'days'),
  week: defineUnit('week', 604_800, 1, 'weeks'),
  month: defineUnit('month', 2_629_800, 1, 'months'),
  yr: defineUnit('yr', 31_557_600, 1, 'yrs', 'year', 'years'),
};
