import { forceUnits } from './force-units.ts';
import { lengthUnits } from './length-units.ts';
import { product } from './product.ts';

/** Torques: 'lbf·ft' in every order and with every joint; where a torque is wanted, 'kg·m' can only be kgf·m. */
export const torqueUnits = {
  poundForceFoot: product(forceUnits.lbf, lengthUnits.ft, 'ftlbf', 'ftlb', 'ftlbs'),
  newtonMeter: product(forceUnits.N, lengthUnits.m),
  poundForceInch: product(forceUnits.lbf, lengthUnits.in, 'inlbf', 'inlb', 'inlbs'),
  kilonewtonMeter: product(forceUnits.kN, lengthUnits.m),
  kilogramForceMeter: product(forceUnits.kgf, lengthUnits.m, 'kg·m', 'kgm', 'm·kg'),
};
