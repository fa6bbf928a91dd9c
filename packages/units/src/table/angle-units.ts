import { defineUnit } from './define-unit.ts';

/** Angles. */
export const angleUnits = {
  degree: defineUnit('°', Math.PI, 180, 'deg', 'degree', 'degrees'),
  radian: defineUnit('rad', 1, 1, 'radian', 'radians'),
};
