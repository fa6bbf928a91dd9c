import { defineUnit } from './define-unit.ts';

/** Masses. The pound is 0.45359237 kg exactly. Source: [nist-sp-811] */
export const massUnits = {
  kg: defineUnit('kg', 1, 1, 'kgs', 'kilogram', 'kilograms'),
  lb: defineUnit('lb', 45_359_237, 100_000_000, 'lbs', 'lbm', 'pound', 'pounds'),
  g: defineUnit('g', 1, 1000, 'gram', 'grams'),
  oz: defineUnit('oz', 45_359_237, 1_600_000_000, 'ounce', 'ounces'),
  t: defineUnit('t', 1000, 1, 'tonne', 'tonnes'),
  slug: defineUnit('slug', 4.4482216152605, 0.3048, 'slugs'),
};
