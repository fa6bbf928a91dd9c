import { forceUnits } from './force-units.ts';
import { lengthUnits } from './length-units.ts';
import { quotient } from './quotient.ts';

/** Lengths given way per force, such as the flex of a pedal box. */
export const flexUnits = {
  millimetersPerKilonewton: quotient(lengthUnits.mm, forceUnits.kN),
  millimetersPerNewton: quotient(lengthUnits.mm, forceUnits.N),
  micrometersPerNewton: quotient(lengthUnits.um, forceUnits.N),
  metersPerNewton: quotient(lengthUnits.m, forceUnits.N),
  inchesPerPoundForce: quotient(lengthUnits.in, forceUnits.lbf),
};
