import { degreeUnits } from './degree-units.ts';
import { energyUnits } from './energy-units.ts';
import { massUnits } from './mass-units.ts';
import { quotient } from './quotient.ts';

/** How fast a specific heat rises with temperature. */
export const specificHeatSlopeUnits = {
  joulesPerKilogramKelvinSquared: quotient(energyUnits.J, massUnits.kg, degreeUnits.kelvinSquared),
  btuPerPoundFahrenheitSquared: quotient(energyUnits.BTU, massUnits.lb, degreeUnits.fahrenheitSquared),
};
