import { requireRange } from '@standstill/numerics';
import type { Pedal } from '../set-up/pedal.ts';

export interface RodForceInput {
  readonly pedal: Pedal;
  /** F_p, N at the pedal pad. */
  readonly force: number;
}

/**
 * Answers how hard the push rod is pressed for a force at the pedal pad.
 *
 * Equation: F_rod = F_p i_p η_p.
 * Assumes: one ratio over the whole travel.
 * Valid: pedal force 0 to 5000 N; ratio 1 to 15; efficiency 0.1 to 1.
 *
 * @param input - pedal with i_p, ratio, 1, and η_p, efficiency, 1; F_p, pedal force, N
 * @returns N, force on the push rod
 * @throws OutOfRangeError where an input cannot be
 * Source: [brake-sheet]
 * @example
 * rodForce({ pedal: exampleSetUp.pedal, force: 100 }) // => 360
 */
export function rodForce({ pedal, force }: RodForceInput): number {
  requirePedal(pedal);
  return requireRange('pedal force', force, 'N', 0, 5000) * pedal.ratio * pedal.efficiency;
}

function requirePedal(pedal: Pedal): void {
  requireRange('pedal ratio', pedal.ratio, '', 1, 15);
  requireRange('pedal efficiency', pedal.efficiency, '', 0.1, 1);
}
