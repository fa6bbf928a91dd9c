import { requireRange } from '@standstill/numerics';

export interface BulkModulusInput {
  /** B_0, Pa, isothermal bulk modulus at the reference temperature of 60 °C. */
  readonly bulkModulus: number;
  /** T, °C. */
  readonly temperature: number;
}

/** °C, where a fluid's stated modulus is taken to hold: the middle of the band from 20 to 100 °C. */
export const bulkModulusReference = 60;
/** 1/K: 1.7 GPa at 60 °C then stays just inside both ends of the handbook band, 2.2 GPa at 20 °C and 1.3 GPa at 100 °C. */
const fallPerKelvin = 0.0064;

/**
 * Answers how stiff brake fluid is at a temperature: hot fluid gives a longer pedal.
 *
 * Equation: B = B_0 exp(−β (T − 60 °C)), β = 0.0064 / K.
 * Assumes: glycol fluid; the stated modulus holds at 60 °C; the fall takes a fluid from the top of the handbook band at
 * 20 °C to its bottom at 100 °C. Single fluids fall by less or more.
 * Valid: −40 to 200 °C, B_0 from 0.2 to 5 GPa; above 100 °C the fall is carried on.
 *
 * @param input - B_0, modulus at 60 °C, Pa; T, temperature of the fluid, °C
 * @returns Pa, isothermal bulk modulus
 * @throws OutOfRangeError where an input cannot be
 * Source: [handbook-fluids]
 * @example
 * bulkModulusAt({ bulkModulus: 1.7e9, temperature: 100 }) // => 1316040000
 */
export function bulkModulusAt({ bulkModulus, temperature }: BulkModulusInput): number {
  requireRange('bulk modulus of the fluid', bulkModulus, 'Pa', 0.2e9, 5e9);
  requireRange('temperature of the fluid', temperature, '°C', -40, 200);
  return bulkModulus * Math.exp(-fallPerKelvin * (temperature - bulkModulusReference));
}
