import { lengthUnits } from './length-units.ts';
import { pressureUnits } from './pressure-units.ts';
import { quotient } from './quotient.ts';

/** Lengths given way per pressure, such as the squeeze of a pad. */
export const lengthComplianceUnits = {
  micrometersPerBar: quotient(lengthUnits.um, pressureUnits.bar),
  micrometersPerMegapascal: quotient(lengthUnits.um, pressureUnits.MPa),
  millimetersPerMegapascal: quotient(lengthUnits.mm, pressureUnits.MPa),
  millimetersPerBar: quotient(lengthUnits.mm, pressureUnits.bar),
  metersPerPascal: quotient(lengthUnits.m, pressureUnits.Pa),
  inchesPerPsi: quotient(lengthUnits.in, pressureUnits.psi),
  inchesPerKsi: quotient(lengthUnits.in, pressureUnits.ksi),
};
