import { requireRange } from '@standstill/numerics';

export interface StillAirInput {
  /** ΔT, K, face above air. */
  readonly excess: number;
  /** L, m, height of the face: the rotor's diameter. */
  readonly height: number;
}

/**
 * Answers how well an upright face gives heat to still air, as on a parked car.
 *
 * Equation: h = 1.42 (ΔT / L)^0.25.
 * Assumes: free air around an upright plate; a wheel around the rotor slows it, so a parked rotor cools more slowly.
 * Valid: laminar, about ΔT L³ from 1e-4 to 10 K m³; excess 0 to 1500 K.
 *
 * @param input - ΔT, face above air, K; L, height of the face, m
 * @returns W/(m² K), coefficient of the face
 * @throws OutOfRangeError where an input cannot be
 * Source: [mcadams]
 * @example
 * stillAirFace({ excess: 300, height: 0.3 }) // => 7.98525
 */
export function stillAirFace({ excess, height }: StillAirInput): number {
  const rise = requireRange('face above air', Math.max(0, excess), 'K', 0, 1500);
  return 1.42 * Math.sqrt(Math.sqrt(rise / requireRange('height of the face', height, 'm', 0.02, 2)));
}
