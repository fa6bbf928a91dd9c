import { defineUnit } from './define-unit.ts';

/** Areas. */
export const areaUnits = {
  cm2: defineUnit('cm²', 1, 10_000, 'sq cm'),
  mm2: defineUnit('mm²', 1, 1_000_000, 'sq mm'),
  m2: defineUnit('m²', 1, 1, 'sq m'),
  in2: defineUnit('in²', 64_516, 100_000_000, 'sq in', 'sq inch', 'square inch', 'square inches'),
  ft2: defineUnit('ft²', 9_290_304, 100_000_000, 'sq ft', 'square foot', 'square feet'),
};
