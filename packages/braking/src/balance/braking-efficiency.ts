import { requireRange } from '@standstill/numerics';
import type { AdhesionUse } from './adhesion-use.ts';

/**
 * Answers how much of the road's grip the brakes use when the first axle is about to lock.
 *
 * Equation: ε = z / max(f_1, f_2).
 * Assumes: as `adhesionUse`.
 * Valid: z above zero.
 *
 * @param use - z, deceleration over g, 1; f_1 and f_2, friction used by each axle, 1
 * @returns 1, deceleration over the friction that it takes; 1 where both axles use the same
 * @throws OutOfRangeError where an input cannot be
 * Source: [un-r13h]
 * @example
 * brakingEfficiency({ deceleration: 0.5, front: 0.4919, rear: 0.52 }) // => 0.961538
 */
export function brakingEfficiency({ deceleration, front, rear }: AdhesionUse): number {
  requireRange('deceleration over g', deceleration, '', 1e-9, 10);
  return deceleration / requireRange('friction used', Math.max(front, rear), '', 1e-9, 1e6);
}
