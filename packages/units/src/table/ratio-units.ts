import { defineUnit } from './define-unit.ts';

/** Plain numbers, shares and percentages; '4.1:1' is 4.1. */
export const ratioUnits = {
  one: defineUnit('1', 1, 1, '', ':1', ': 1'),
  percent: defineUnit('%', 1, 100, 'percent', 'pct'),
};
