import { defineUnit } from './define-unit.ts';

/** Powers. 'hp' is 550 ft·lbf a second; the metric horsepower is 75 kgf·m a second. Source: [nist-sp-811] */
export const powerUnits = {
  kW: defineUnit('kW', 1000, 1, 'kilowatt', 'kilowatts'),
  hp: defineUnit('hp', 550 * 0.3048 * 4.4482216152605, 1, 'bhp', 'horsepower'),
  W: defineUnit('W', 1, 1, 'watt', 'watts'),
  metricHorsepower: defineUnit('PS', 73_549_875, 100_000, 'metric hp', 'hp(M)'),
};
