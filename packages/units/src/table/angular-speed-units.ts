import { defineUnit } from './define-unit.ts';

/** Angular speeds. */
export const angularSpeedUnits = {
  rpm: defineUnit('rpm', Math.PI, 30, 'r/min', 'rev/min', '1/min', 'min⁻¹'),
  radiansPerSecond: defineUnit('rad/s', 1, 1, 'rad/sec', 'rad·s⁻¹'),
  degreesPerSecond: defineUnit('°/s', Math.PI, 180, 'deg/s', 'deg/sec'),
};
