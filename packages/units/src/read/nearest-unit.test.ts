import { expect, test } from 'vitest';
import { nearestUnit } from './nearest-unit.ts';

test.each([
  ['inn', 'length', 'in'],
  ['psii', 'pressure', 'psi'],
  ['mpa', 'pressure', 'MPa'],
  ['kmh/', 'speed', 'km/h'],
  ['mhp', 'speed', 'mph'],
  ['lbf·tf', 'torque', 'lbf·ft'],
  ['celcius', 'temperature', '°C'],
] as const)('%s as a %s is meant as %s', (text, dimension, unit) => {
  expect(nearestUnit(text, dimension)).toBe(unit);
});

test.each([
  ['x', 'length'],
  ['wobble', 'length'],
  ['', 'length'],
  ['zz', 'pressure'],
] as const)('%j is near to no %s', (text, dimension) => {
  expect(nearestUnit(text, dimension)).toBeUndefined();
});
