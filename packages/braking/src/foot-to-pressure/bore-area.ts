import { requireRange } from '@standstill/numerics';

/**
 * Answers the piston area of a master cylinder bore.
 *
 * Equation: A = π D² / 4.
 * Valid: bores 5 to 60 mm.
 *
 * @param bore - D, bore, m
 * @returns m², piston area
 * @throws OutOfRangeError where the bore cannot be
 * Source: [textbook-formula]
 * @example
 * boreArea(0.02) // => 0.000314159
 */
export function boreArea(bore: number): number {
  requireRange('master cylinder bore', bore, 'm', 0.005, 0.06);
  return (Math.PI / 4) * bore * bore;
}
