import { requireRange } from '@standstill/numerics';

/**
 * Answers how hard hot brakes must still stop a car in the rule's hot-performance test; a yardstick, not a type approval.
 *
 * Equation: a_hot = 0.6 a_cold, at a mean pedal force not above that of the cold stop.
 * Assumes: the best cold stop, and the hot stop right after the heating snubs, both by the rule.
 * Valid: cold deceleration up to 15 m/s².
 *
 * @param coldDeceleration - a_cold, m/s², of the best cold stop
 * @returns a_hot, m/s²
 * @throws OutOfRangeError where the deceleration cannot be
 * Source: [fmvss-135]
 * @example
 * leastHotDeceleration(9) // => 5.4
 */
export function leastHotDeceleration(coldDeceleration: number): number {
  return 0.6 * requireRange('cold deceleration', coldDeceleration, 'm/s²', 0, 15);
}
