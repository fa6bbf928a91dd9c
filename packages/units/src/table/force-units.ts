import { defineUnit } from './define-unit.ts';

/**
 * Forces. The pound-force is 0.45359237 kg × 9.80665 m/s² exactly. Where a force is wanted, 'lb' can only mean
 * pound-force and is read so; 'kg' is refused, because a weight in kg is a mass. Source: [nist-sp-811]
 */
export const forceUnits = {
  N: defineUnit('N', 1, 1, 'newton', 'newtons'),
  lbf: defineUnit('lbf', 4.4482216152605, 1, 'lb', 'lbs', 'lbsf', 'pound', 'pounds', 'pound-force'),
  kN: defineUnit('kN', 1000, 1, 'kilonewton', 'kilonewtons'),
  daN: defineUnit('daN', 10, 1),
  kgf: defineUnit('kgf', 980_665, 100_000, 'kp'),
};
