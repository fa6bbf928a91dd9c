export interface AirDensityInput {
  /** H, m above sea level. */
  readonly altitude: number;
  /** °C. */
  readonly temperature: number;
}

/**
 * Answers how dense the air is that drags on the car.
 *
 * Equation: ρ = p / (R T), p = 101325 (1 − 2.25577e-5 H)^5.25588 Pa, R = 287.05 J/(kg K), T = temperature + 273.15
 * Assumes: dry air at the standard atmosphere's pressure for the altitude.
 * Valid: 0 to 5000 m.
 *
 * @param input - H, altitude, m; temperature, °C
 * @returns ρ, kg/m³
 * Source: [standard-atmosphere]
 * @example
 * airDensity({ altitude: 0, temperature: 15 }) // => 1.22501
 */
export function airDensity({ altitude, temperature }: AirDensityInput): number {
  const pressure = 101_325 * Math.pow(1 - 2.25577e-5 * altitude, 5.25588);
  return pressure / (287.05 * (temperature + 273.15));
}
