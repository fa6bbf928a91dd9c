import { defineUnit } from './define-unit.ts';

/** Temperature differences: here 90 °F is 50 K, while as a temperature it is 32.2 °C. */
export const temperatureDifferenceUnits = {
  kelvin: defineUnit('K', 1, 1, 'kelvin'),
  celsius: defineUnit('°C', 1, 1, 'C', 'degC', 'deg C', 'degrees C', 'celsius', 'degrees celsius', 'Δ°C'),
  fahrenheit: defineUnit(
    '°F',
    5,
    9,
    'F',
    'degF',
    'deg F',
    'degrees F',
    'fahrenheit',
    'degrees fahrenheit',
    'Δ°F',
  ),
};
