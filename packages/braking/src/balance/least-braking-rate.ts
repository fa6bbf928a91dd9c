import { requireRange } from '@standstill/numerics';

/**
 * Answers the least deceleration that UN R13-H Annex 5 asks for on a road of a given friction.
 *
 * Equation: z ≥ 0.1 + 0.7 (k − 0.2).
 * Valid: k from 0.2 to 0.8.
 *
 * @param friction - k, friction between tire and road, 1
 * @returns z, deceleration over g, 1
 * @throws OutOfRangeError outside the regulation's range
 * Source: [un-r13h]
 * @example
 * leastBrakingRate(0.5) // => 0.31
 */
export function leastBrakingRate(friction: number): number {
  return 0.1 + 0.7 * (requireRange('friction of the road', friction, '', 0.2, 0.8) - 0.2);
}
