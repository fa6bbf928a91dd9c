import { defineUnit } from './define-unit.ts';

/** Accelerations. Standard gravity is 9.80665 m/s² exactly. Source: [nist-sp-811] */
export const accelerationUnits = {
  g: defineUnit('g', 980_665, 100_000, 'g0', 'gn', 'g_n', 'g_0'),
  metersPerSecondSquared: defineUnit('m/s²', 1, 1, 'm/s/s', 'm·s⁻²', 'm/sec²'),
  feetPerSecondSquared: defineUnit('ft/s²', 3048, 10_000, 'ft/s/s', 'ft·s⁻²', 'ft/sec²'),
};
