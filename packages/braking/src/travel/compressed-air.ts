import { requireRange } from '@standstill/numerics';

export interface CompressedAirInput {
  /** V_0, m³ of trapped air at atmospheric pressure. */
  readonly volume: number;
  /** p, Pa above ambient. */
  readonly pressure: number;
  /** n, 1; 1 where not given. */
  readonly exponent?: number;
}

/** Pa. */
const ambientPressure = 101_325;

/**
 * Answers how much trapped air shrinks under line pressure.
 *
 * Equation: ΔV = V_0 (1 − (p_a / (p_a + p))^(1/n)).
 * Assumes: absolute pressure, p_a = 101325 Pa; a slow push (n = 1; 1.4 for a fast one); no air dissolves, so this is an
 * upper bound.
 * Valid: up to 1 liter of air, n from 1 to 1.4.
 *
 * @param input - V_0, air at atmospheric pressure, m³; p, line pressure, Pa; n, exponent, 1
 * @returns m³ that the master cylinder must make up
 * @throws OutOfRangeError where an input cannot be
 * Source: [textbook-formula]
 * @example
 * compressedAir({ volume: 1e-6, pressure: 101325 }) // => 5e-7
 */
export function compressedAir({ volume, pressure, exponent = 1 }: CompressedAirInput): number {
  requireRange('trapped air', volume, 'm³', 0, 0.001);
  requireRange('line pressure', pressure, 'Pa', 0, 60e6);
  requireRange('exponent of the trapped air', exponent, '', 1, 1.4);
  return volume * (1 - Math.pow(ambientPressure / (ambientPressure + pressure), 1 / exponent));
}
