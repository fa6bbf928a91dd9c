import { defineUnit } from './define-unit.ts';

/** What 'per degree' may be written as inside a compound unit, where °C and K are the same. */
export const degreeUnits = {
  kelvin: defineUnit('K', 1, 1, '°C', 'C', 'degC'),
  kelvinSquared: defineUnit('K²', 1, 1, '°C²', 'C²'),
  fahrenheit: defineUnit('°F', 5, 9, 'F', 'degF'),
  fahrenheitSquared: defineUnit('°F²', 25, 81, 'F²'),
};
