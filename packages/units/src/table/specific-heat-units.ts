import { degreeUnits } from './degree-units.ts';
import { energyUnits } from './energy-units.ts';
import { massUnits } from './mass-units.ts';
import { quotient } from './quotient.ts';

/** Specific heats. */
export const specificHeatUnits = {
  joulesPerKilogramKelvin: quotient(energyUnits.J, massUnits.kg, degreeUnits.kelvin),
  kilojoulesPerKilogramKelvin: quotient(energyUnits.kJ, massUnits.kg, degreeUnits.kelvin),
  joulesPerGramKelvin: quotient(energyUnits.J, massUnits.g, degreeUnits.kelvin),
  btuPerPoundFahrenheit: quotient(energyUnits.BTU, massUnits.lb, degreeUnits.fahrenheit),
};
