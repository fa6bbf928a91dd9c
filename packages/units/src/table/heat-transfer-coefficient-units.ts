import { areaUnits } from './area-units.ts';
import { degreeUnits } from './degree-units.ts';
import { energyUnits } from './energy-units.ts';
import { powerUnits } from './power-units.ts';
import { quotient } from './quotient.ts';
import { timeUnits } from './time-units.ts';

/** Heat transfer coefficients. */
export const heatTransferCoefficientUnits = {
  wattsPerSquareMeterKelvin: quotient(powerUnits.W, areaUnits.m2, degreeUnits.kelvin),
  btuPerHourSquareFootFahrenheit: quotient(
    energyUnits.BTU,
    timeUnits.h,
    areaUnits.ft2,
    degreeUnits.fahrenheit,
  ),
};
