import { defineUnit } from './define-unit.ts';

/** Lengths. The inch is 25.4 mm exactly. Source: [nist-sp-811] */
export const lengthUnits = {
  mm: defineUnit('mm', 1, 1000, 'millimeter', 'millimeters', 'millimetre', 'millimetres'),
  m: defineUnit('m', 1, 1, 'meter', 'meters', 'metre', 'metres'),
  in: defineUnit('in', 254, 10_000, '"', 'inch', 'inches'),
  ft: defineUnit('ft', 3048, 10_000, "'", 'foot', 'feet'),
  cm: defineUnit('cm', 1, 100, 'centimeter', 'centimeters', 'centimetre', 'centimetres'),
  um: defineUnit(
    'µm',
    1,
    1_000_000,
    'micron',
    'microns',
    'micrometer',
    'micrometers',
    'micrometre',
    'micrometres',
  ),
  thou: defineUnit('thou', 254, 10_000_000),
  yd: defineUnit('yd', 9144, 10_000, 'yard', 'yards'),
  km: defineUnit('km', 1000, 1, 'kilometer', 'kilometers', 'kilometre', 'kilometres'),
  mi: defineUnit('mi', 1_609_344, 1000, 'mile', 'miles'),
};
