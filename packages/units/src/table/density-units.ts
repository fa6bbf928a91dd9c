import { massUnits } from './mass-units.ts';
import { quotient } from './quotient.ts';
import { volumeUnits } from './volume-units.ts';

/** Densities. */
export const densityUnits = {
  kilogramsPerCubicMeter: quotient(massUnits.kg, volumeUnits.m3),
  gramsPerCubicCentimeter: quotient(massUnits.g, volumeUnits.cm3),
  kilogramsPerLiter: quotient(massUnits.kg, volumeUnits.L),
  poundsPerCubicFoot: quotient(massUnits.lb, volumeUnits.ft3),
  poundsPerCubicInch: quotient(massUnits.lb, volumeUnits.in3),
};
