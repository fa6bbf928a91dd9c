import { defineUnit } from './define-unit.ts';
import { lengthUnits } from './length-units.ts';
import { quotient } from './quotient.ts';
import { timeUnits } from './time-units.ts';

/** Speeds. The knot is 1852 m an hour exactly. Source: [nist-sp-811] */
export const speedUnits = {
  metersPerSecond: quotient(lengthUnits.m, timeUnits.s),
  kilometersPerHour: defineUnit('km/h', 10, 36, 'kph', 'kmh', 'kmph', 'km/hr', 'km/hour'),
  mph: defineUnit('mph', 44_704, 100_000, 'mi/h', 'mi/hr', 'miles/h', 'miles/hour', 'mile/hour'),
  feetPerSecond: defineUnit('ft/s', 3048, 10_000, 'fps', 'ft/sec', 'feet/s', 'feet/second'),
  knot: defineUnit('kn', 1852, 3600, 'kt', 'kts', 'knot', 'knots'),
};
