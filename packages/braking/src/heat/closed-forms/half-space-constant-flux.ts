import { requireRange } from '@standstill/numerics';
import { effusivity, type HeatConductor } from '../effusivity.ts';

export interface HalfSpaceInput extends HeatConductor {
  /** q, W/m². */
  readonly flux: number;
  /** t, s. */
  readonly time: number;
}

/**
 * Answers how much warmer the face of a very thick body gets under a constant heat flux.
 *
 * Equation: ΔT = 2 q √(t / π) / e, e = √(k ρ c).
 * Assumes: half space, constant properties, no cooling.
 * Valid: while heat has not reached the back: α t / L² below about 0.1.
 *
 * @param input - k, W/(m K); ρ, kg/m³; c, J/(kg K); q, flux, W/m²; t, time, s
 * @returns K, rise of the face
 * @throws OutOfRangeError where an input cannot be
 * Source: [carslaw-jaeger]
 * @example
 * halfSpaceConstantFlux({ conductivity: 50, density: 7200, specificHeat: 460, flux: 1.5e6, time: 3 }) // => 227.812
 */
export function halfSpaceConstantFlux(input: HalfSpaceInput): number {
  const flux = requireRange('heat flux', input.flux, 'W/m²', 0, 1e9);
  const time = requireRange('time', input.time, 's', 0, 1e6);
  return (2 * flux * Math.sqrt(time / Math.PI)) / effusivity(input);
}
