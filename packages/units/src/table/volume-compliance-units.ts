import { pressureUnits } from './pressure-units.ts';
import { quotient } from './quotient.ts';
import { volumeUnits } from './volume-units.ts';

/** Volumes taken up per pressure, such as the stretch of a caliper. */
export const volumeComplianceUnits = {
  cubicMillimetersPerBar: quotient(volumeUnits.mm3, pressureUnits.bar),
  cubicCentimetersPerBar: quotient(volumeUnits.cm3, pressureUnits.bar),
  cubicMillimetersPerMegapascal: quotient(volumeUnits.mm3, pressureUnits.MPa),
  cubicCentimetersPerMegapascal: quotient(volumeUnits.cm3, pressureUnits.MPa),
  cubicMetersPerPascal: quotient(volumeUnits.m3, pressureUnits.Pa),
  cubicInchesPerPsi: quotient(volumeUnits.in3, pressureUnits.psi),
  cubicInchesPerKsi: quotient(volumeUnits.in3, pressureUnits.ksi),
  cubicCentimetersPerPsi: quotient(volumeUnits.cm3, pressureUnits.psi),
};
