import { defineUnit } from './define-unit.ts';

/** Volumes. The fluid ounce is that of the US. Source: [nist-sp-811] */
export const volumeUnits = {
  cm3: defineUnit('cm³', 1, 1_000_000, 'cc', 'ccm', 'cu cm', 'mL'),
  mm3: defineUnit('mm³', 1, 1_000_000_000, 'cu mm', 'µL'),
  L: defineUnit('L', 1, 1000, 'l', 'liter', 'liters', 'litre', 'litres', 'dm³'),
  m3: defineUnit('m³', 1, 1, 'cu m'),
  in3: defineUnit('in³', 16_387_064, 1_000_000_000_000, 'cu in', 'cubic inch', 'cubic inches'),
  ft3: defineUnit('ft³', 28_316_846_592, 1_000_000_000_000, 'cu ft', 'cubic foot', 'cubic feet'),
  fluidOunce: defineUnit('fl oz', 295_735_295_625, 10_000_000_000_000_000),
};
