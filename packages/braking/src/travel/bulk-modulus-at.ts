import { requireRange } from '@standstill/numerics';

export interface BulkModulusInput {
  /** B_0, Pa, isothermal bulk modulus at the reference temperature of 60 °C. */
  readonly bulkModulus: number;
  /** T, °C. */
  readonly temperature: number;
}

/** °C, where a fluid's stated modulus is taken to hold: the middle of the band from 20 to 100 °C. */
export const bulkModulusReference = 60;
/** 1/K: from the ends of the handbook band, ln(2.2 GPa / 1.3 GPa) over 80 K. */
const fallPerKelvin = Math.log(2.2 / 1.3) / 80;

/**
 * Answers how stiff brake fluid is at a temperature: hot fluid gives a longer pedal.
 *
 * Equation: B = B_0 exp(−β (T − 60 °C)), β = ln(2.2 / 1.3) / 80 K.
 * Assumes: glycol fluid; the stated modulus holds at 60 °C; the fall takes a fluid from the top of the handbook band at
 * 20 °C to its bottom at 100 °C. Single fluids fall by less or more.
 * Valid: −40 to 200 °C, B_0 from 0.2 to 5 GPa; above 100 °C the fall is carried on.
 *
 * @param input - B_0, modulus at 60 °C, Pa; T, temperature of the fluid, °C
 * @returns Pa, isothermal bulk modulus
 * @throws OutOfRangeError where an input cannot be
 * Source: [handbook-fluids]
 * @example
 * bulkModulusAt({ bulkModulus: 1.7e9, temperature: 100 }) // => 1306800000
 */
export function bulkModulusAt({ bulkModulus, temperature }: BulkModulusInput): number {
  requireRange('bulk modulus of the fluid', bulkModulus, 'Pa', 0.2e9, 5e9);
  requireRange('temperature of the fluid', temperature, '°C', -40, 200);
  return bulkModulus * Math.exp(-fallPerKelvin * (temperature - bulkModulusReference));
}
