import { requireRange } from '@standstill/numerics';
import type { Booster } from '../set-up/booster.ts';
import { boosterAssist } from './booster-assist.ts';

export interface BoosterOutputInput {
  readonly booster: Booster;
  /** F_rod, N, force on the input rod. */
  readonly rodForce: number;
}

export interface BoosterOutput {
  /** F_out, N, force on the master cylinder. */
  readonly force: number;
  /** True once the assist is used up: from here on the foot adds one for one. */
  readonly runOut: boolean;
}

/**
 * Answers how hard the booster presses the master cylinder, and whether its assist is used up.
 *
 * Equation: F_out = F_rod + min(J + (k − 1) F_rod, A_d Δp η) for F_rod above zero; F_out = 0 at zero.
 * Assumes: as `boosterAssist`; slow application, no hysteresis.
 * Valid: rod force 0 to 75 kN. Monotone; continuous but for the jump-in at the first touch.
 *
 * @param input - booster; F_rod, input rod force, N
 * @returns F_out, output force, N; and whether the booster has run out
 * @throws OutOfRangeError where an input cannot be
 * Source: [common-practice]
 * @example
 * boosterOutput({ booster: { kind: 'hydraulic', gain: 4, greatestAssist: 3000 }, rodForce: 500 }).force // => 2000
 */
export function boosterOutput({ booster, rodForce }: BoosterOutputInput): BoosterOutput {
  const { start, slope, limit } = boosterAssist(booster);
  requireRange('rod force', rodForce, 'N', 0, 75_000);
  if (rodForce === 0) return { force: 0, runOut: false };
  const wanted = start + slope * rodForce;
  const runOut = booster.kind !== 'none' && wanted >= limit;
  return { force: rodForce + Math.min(wanted, limit), runOut };
}
