import { requireRange } from '@standstill/numerics';

export interface HeatConductor {
  /** k, W/(m K). */
  readonly conductivity: number;
  /** ρ, kg/m³. */
  readonly density: number;
  /** c, J/(kg K). */
  readonly specificHeat: number;
}

/**
 * Answers how readily a material takes up heat through its face.
 *
 * Equation: e = √(k ρ c).
 * Valid: any solid.
 *
 * @param material - k, conductivity, W/(m K); ρ, density, kg/m³; c, specific heat, J/(kg K)
 * @returns W √s/(m² K), effusivity
 * @throws OutOfRangeError where an input cannot be
 * Source: [carslaw-jaeger]
 * @example
 * effusivity({ conductivity: 50, density: 7200, specificHeat: 460 }) // => 12868.6
 */
export function effusivity({ conductivity, density, specificHeat }: HeatConductor): number {
  requireRange('conductivity', conductivity, 'W/(m K)', 1e-3, 2500);
  requireRange('density', density, 'kg/m³', 10, 25_000);
  requireRange('specific heat', specificHeat, 'J/(kg K)', 50, 5000);
  return Math.sqrt(conductivity * density * specificHeat);
}
