import { enthalpyZero, type LinearSpecificHeat } from './specific-enthalpy.ts';

/**
 * Answers how warm a material is that holds a known heat: the inverse of `specificEnthalpy`.
 *
 * Equation: T = 20 + 2 h / (c_0 + √(c_0² + 2 c_1 h)).
 * Assumes: as `specificEnthalpy`.
 * Valid: wherever the specific heat is above zero (c_0² + 2 c_1 h > 0).
 *
 * @param material - c_0, specific heat at 20 °C, J/(kg K); c_1, its rise, J/(kg K²)
 * @param enthalpy - h, heat held above 20 °C, J/kg
 * @returns °C, temperature
 * Source: [geometry]
 * @example
 * temperatureOfEnthalpy({ specificHeat: 460, specificHeatSlope: 0.4 }, 280000) // => 520
 */
export function temperatureOfEnthalpy(material: LinearSpecificHeat, enthalpy: number): number {
  const { specificHeat, specificHeatSlope } = material;
  const root = Math.sqrt(specificHeat * specificHeat + 2 * specificHeatSlope * enthalpy);
  return enthalpyZero + (2 * enthalpy) / (specificHeat + root);
}
