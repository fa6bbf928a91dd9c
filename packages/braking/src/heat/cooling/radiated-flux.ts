import { requireRange } from '@standstill/numerics';

export interface RadiationInput {
  /** ε, 1. */
  readonly emissivity: number;
  /** T, °C, of the face. */
  readonly temperature: number;
  /** T_s, °C, of what the face sees. */
  readonly surroundings: number;
}

/** σ, W/(m² K⁴), Stefan and Boltzmann's constant. */
export const stefanBoltzmann = 5.670374e-8;

/** K at 0 °C. */
export const kelvinAtZeroCelsius = 273.15;

/**
 * Answers how much heat a face radiates to its surroundings.
 *
 * Equation: q = ε σ (T⁴ − T_s⁴), kelvin.
 * Assumes: gray face, surroundings large and of one temperature.
 * Valid: −60 to 1500 °C.
 *
 * @param input - ε, emissivity, 1; T, face, °C; T_s, surroundings, °C
 * @returns W/m², heat radiated
 * @throws OutOfRangeError where an input cannot be
 * Source: [stefan-boltzmann]
 * @example
 * radiatedFlux({ emissivity: 0.55, temperature: 400, surroundings: 20 }) // => 6173.24
 */
export function radiatedFlux(input: RadiationInput): number {
  requireRadiation(input);
  const face = input.temperature + kelvinAtZeroCelsius;
  const seen = input.surroundings + kelvinAtZeroCelsius;
  return input.emissivity * stefanBoltzmann * (face ** 4 - seen ** 4);
}

/**
 * Throws where a radiating face cannot be.
 *
 * @param input - ε, emissivity, 1; T, face, °C; T_s, surroundings, °C
 * @throws OutOfRangeError where an input cannot be
 */
export function requireRadiation(input: RadiationInput): void {
  requireRange('emissivity', input.emissivity, '', 0, 1);
  requireRange('temperature of the face', input.temperature, '°C', -60, 1500);
  requireRange('temperature of the surroundings', input.surroundings, '°C', -60, 1500);
}
