import { areaUnits } from './area-units.ts';
import { defineUnit } from './define-unit.ts';
import { forceUnits } from './force-units.ts';
import { quotient } from './quotient.ts';
import type { Unit } from './unit.ts';

const poundPerSquareInch = quotient(forceUnits.lbf, areaUnits.in2);
const kilogramPerSquareCentimeter = quotient(forceUnits.kgf, areaUnits.cm2);

/** Pascal under a column of mercury one meter high: 13595.1 kg/m³ × 9.80665 m/s². Source: [nist-sp-811] */
const mercury = 13_595.1 * 9.80665;

/** Pressures, all as differences: whether a gauge or an absolute pressure is meant, the field says. Source: [nist-sp-811] */
export const pressureUnits = {
  psi: { ...poundPerSquareInch, symbol: 'psi', spellings: ['psig', 'psid', ...poundPerSquareInch.spellings] },
  bar: defineUnit('bar', 100_000, 1, 'bars'),
  kPa: defineUnit('kPa', 1000, 1, 'kilopascal', 'kilopascals'),
  MPa: defineUnit('MPa', 1_000_000, 1, 'N/mm²', 'megapascal', 'megapascals'),
  Pa: defineUnit('Pa', 1, 1, 'pascal', 'pascals', 'N/m²'),
  GPa: defineUnit('GPa', 1_000_000_000, 1, 'gigapascal', 'gigapascals'),
  mbar: defineUnit('mbar', 100, 1, 'hPa', 'millibar'),
  ksi: defineUnit('ksi', poundPerSquareInch.times * 1000, poundPerSquareInch.over),
  inHg: defineUnit('inHg', mercury * 254, 10_000, 'in Hg', '"Hg'),
  mmHg: defineUnit('mmHg', mercury, 1000, 'mm Hg'),
  atm: defineUnit('atm', 101_325, 1),
  kgfPerSquareCentimeter: {
    ...kilogramPerSquareCentimeter,
    spellings: [...kilogramPerSquareCentimeter.spellings, 'kg/cm²'],
  },
} satisfies Record<string, Unit>;
