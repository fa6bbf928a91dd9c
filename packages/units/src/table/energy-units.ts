import { defineUnit } from './define-unit.ts';
import { forceUnits } from './force-units.ts';
import { lengthUnits } from './length-units.ts';
import { product } from './product.ts';

/** Energies. The BTU is that of the International Table. Source: [nist-sp-811] */
export const energyUnits = {
  kJ: defineUnit('kJ', 1000, 1, 'kilojoule', 'kilojoules'),
  J: defineUnit('J', 1, 1, 'joule', 'joules'),
  MJ: defineUnit('MJ', 1_000_000, 1, 'megajoule', 'megajoules'),
  BTU: defineUnit('BTU', 1055.05585262, 1, 'Btu'),
  footPoundForce: product(lengthUnits.ft, forceUnits.lbf),
  kWh: defineUnit('kWh', 3_600_000, 1, 'kW·h'),
};
