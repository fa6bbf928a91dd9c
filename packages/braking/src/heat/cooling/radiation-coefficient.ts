import {
  kelvinAtZeroCelsius,
  requireRadiation,
  stefanBoltzmann,
  type RadiationInput,
} from './radiated-flux.ts';

/**
 * Answers the coefficient that a radiating face would need if it lost the same heat to air as warm as its surroundings.
 *
 * Equation: h = ε σ (T² + T_s²)(T + T_s), kelvin.
 * Assumes: as `radiatedFlux`.
 * Valid: −60 to 1500 °C.
 *
 * @param input - ε, emissivity, 1; T, face, °C; T_s, surroundings, °C
 * @returns W/(m² K), coefficient
 * @throws OutOfRangeError where an input cannot be
 * Source: [stefan-boltzmann]
 * @example
 * radiationCoefficient({ emissivity: 0.55, temperature: 400, surroundings: 20 }) // => 16.2454
 */
export function radiationCoefficient(input: RadiationInput): number {
  requireRadiation(input);
  const face = input.temperature + kelvinAtZeroCelsius;
  const seen = input.surroundings + kelvinAtZeroCelsius;
  return input.emissivity * stefanBoltzmann * (face * face + seen * seen) * (face + seen);
}
