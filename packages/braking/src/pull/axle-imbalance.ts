import { requireRange } from '@standstill/numerics';

/**
 * Answers how unequal the two brakes of an axle are, as a roadworthiness test counts it.
 *
 * Equation: (F_strong − F_weak) / F_strong.
 * Valid: forces from 0 N.
 *
 * @param left - brake force of the left wheel, N
 * @param right - brake force of the right wheel, N
 * @returns 1, from 0 for equal brakes to 1 for one that does nothing; 0 where neither brakes
 * @throws OutOfRangeError where an input cannot be
 * Source: [roadworthiness]
 * @example
 * axleImbalance(3000, 2100) // => 0.3
 */
export function axleImbalance(left: number, right: number): number {
  requireRange('brake force of a wheel', left, 'N', 0, 1e6);
  requireRange('brake force of a wheel', right, 'N', 0, 1e6);
  const strong = Math.max(left, right);
  return strong === 0 ? 0 : (strong - Math.min(left, right)) / strong;
}

/**
 * Limits of a British roadworthiness test: brake effort over weight of a car first used from September 2010, the same
 * of its parking brake, and the imbalance of an axle that fails.
 *
 * Source: [roadworthiness]
 */
export const roadworthinessLimits = { serviceEffort: 0.58, parkingEffort: 0.16, imbalance: 0.3 } as const;
