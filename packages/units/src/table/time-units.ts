import { defineUnit } from './define-unit.ts';

/** Times. */
export const timeUnits = {
  s: defineUnit('s', 1, 1, 'sec', 'secs', 'second', 'seconds'),
  ms: defineUnit('ms', 1, 1000, 'msec', 'millisecond', 'milliseconds'),
  min: defineUnit('min', 60, 1, 'mins', 'minute', 'minutes'),
  h: defineUnit('h', 3600, 1, 'hr', 'hrs', 'hour', 'hours'),
};
