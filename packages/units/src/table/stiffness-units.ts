import { forceUnits } from './force-units.ts';
import { lengthUnits } from './length-units.ts';
import { quotient } from './quotient.ts';

/** Forces per length. */
export const stiffnessUnits = {
  newtonsPerMillimeter: quotient(forceUnits.N, lengthUnits.mm),
  newtonsPerMeter: quotient(forceUnits.N, lengthUnits.m),
  kilonewtonsPerMeter: quotient(forceUnits.kN, lengthUnits.m),
  kilonewtonsPerMillimeter: quotient(forceUnits.kN, lengthUnits.mm),
  poundsForcePerInch: quotient(forceUnits.lbf, lengthUnits.in),
};
