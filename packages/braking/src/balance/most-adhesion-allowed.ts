import { requireRange } from '@standstill/numerics';

/**
 * Answers how much friction an axle may use at a deceleration under UN R13-H Annex 5: the limit of `leastBrakingRate`,
 * read the other way round, to be drawn beside the curves.
 *
 * Equation: k = 0.2 + (z − 0.1) / 0.7.
 * Valid: z from 0.10 to 0.52, where k runs from 0.2 to 0.8.
 *
 * @param deceleration - z, deceleration over g, 1
 * @returns k, 1, friction
 * @throws OutOfRangeError outside the regulation's range
 * Source: [un-r13h]
 * @example
 * mostAdhesionAllowed(0.31) // => 0.5
 */
export function mostAdhesionAllowed(deceleration: number): number {
  return 0.2 + (requireRange('deceleration over g', deceleration, '', 0.1, 0.52) - 0.1) / 0.7;
}
