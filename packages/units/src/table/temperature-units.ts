import { defineUnit } from './define-unit.ts';
import type { Unit } from './unit.ts';

const fahrenheitSpellings = ['F', 'degF', 'deg F', 'degrees F', 'fahrenheit', 'degrees fahrenheit'];

/** Temperatures; the value inside the program is in °C. */
export const temperatureUnits = {
  celsius: defineUnit('°C', 1, 1, 'C', 'degC', 'deg C', 'degrees C', 'celsius', 'degrees celsius'),
  fahrenheit: { symbol: '°F', times: 5, over: 9, zero: 32, spellings: fahrenheitSpellings },
  kelvin: { symbol: 'K', times: 1, over: 1, zero: 273.15, spellings: ['kelvin'] },
} satisfies Record<string, Unit>;
