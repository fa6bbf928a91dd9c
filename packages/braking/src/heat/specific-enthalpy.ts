/** Specific heat that rises in a straight line with temperature. */
export interface LinearSpecificHeat {
  /** c_0, J/(kg K) at 20 °C. */
  readonly specificHeat: number;
  /** c_1, J/(kg K²). */
  readonly specificHeatSlope: number;
}

/** °C at which enthalpy is counted as zero and at which c_0 holds. */
export const enthalpyZero = 20;

/**
 * Answers how much heat one kilogram holds above 20 °C.
 *
 * Equation: h = c_0 (T − 20) + ½ c_1 (T − 20)².
 * Assumes: specific heat c = c_0 + c_1 (T − 20); no change of phase.
 * Valid: as the two figures of the material; for grey iron up to about 700 °C.
 *
 * @param material - c_0, specific heat at 20 °C, J/(kg K); c_1, its rise, J/(kg K²)
 * @param temperature - T, °C
 * @returns J/kg, heat held above 20 °C; negative below
 * Source: [geometry]
 * @example
 * specificEnthalpy({ specificHeat: 460, specificHeatSlope: 0.4 }, 520) // => 280000
 */
export function specificEnthalpy(material: LinearSpecificHeat, temperature: number): number {
  const rise = temperature - enthalpyZero;
  return rise * (material.specificHeat + 0.5 * material.specificHeatSlope * rise);
}
