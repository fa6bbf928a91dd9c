import { degreeUnits } from './degree-units.ts';
import { energyUnits } from './energy-units.ts';
import { lengthUnits } from './length-units.ts';
import { powerUnits } from './power-units.ts';
import { quotient } from './quotient.ts';
import { timeUnits } from './time-units.ts';

/** Thermal conductivities. */
export const conductivityUnits = {
  wattsPerMeterKelvin: quotient(powerUnits.W, lengthUnits.m, degreeUnits.kelvin),
  btuPerHourFootFahrenheit: quotient(energyUnits.BTU, timeUnits.h, lengthUnits.ft, degreeUnits.fahrenheit),
};
