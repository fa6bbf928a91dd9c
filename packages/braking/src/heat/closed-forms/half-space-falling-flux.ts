import { requireRange } from '@standstill/numerics';
import { effusivity, type HeatConductor } from '../effusivity.ts';

export interface HalfSpaceFallingInput extends HeatConductor {
  /** q_0, W/m², at the start. */
  readonly startFlux: number;
  /** t_s, s, when the flux has fallen to zero. */
  readonly stopTime: number;
  /** t, s. */
  readonly time: number;
}

/**
 * Answers how much warmer the face of a very thick body is when the flux falls in a straight line to zero, as in a stop
 * at constant deceleration.
 *
 * Equation: ΔT = (2 q_0 √t / (√π e)) (1 − 2 t / (3 t_s)); greatest at t = t_s / 2.
 * Assumes: half space, constant properties, no cooling.
 * Valid: 0 ≤ t ≤ t_s, while heat has not reached the back.
 *
 * @param input - k, W/(m K); ρ, kg/m³; c, J/(kg K); q_0, flux at the start, W/m²; t_s, stop time, s; t, time, s
 * @returns K, rise of the face
 * @throws OutOfRangeError where an input cannot be
 * Source: [carslaw-jaeger]
 * @example
 * halfSpaceFallingFlux({ conductivity: 50, density: 7200, specificHeat: 460, startFlux: 3e6, stopTime: 3, time: 1.5 }) // => 214.783
 */
export function halfSpaceFallingFlux(input: HalfSpaceFallingInput): number {
  const flux = requireRange('heat flux at the start', input.startFlux, 'W/m²', 0, 1e9);
  const stopTime = requireRange('stop time', input.stopTime, 's', 1e-6, 1e6);
  const time = requireRange('time', input.time, 's', 0, stopTime);
  const whole = (2 * flux * Math.sqrt(time / Math.PI)) / effusivity(input);
  return whole * (1 - (2 * time) / (3 * stopTime));
}
