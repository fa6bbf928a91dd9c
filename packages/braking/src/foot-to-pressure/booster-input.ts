import { requireRange } from '@standstill/numerics';
import type { Booster } from '../set-up/booster.ts';
import { boosterAssist } from './booster-assist.ts';

export interface BoosterInputInput {
  readonly booster: Booster;
  /** F_out, N, force wanted on the master cylinder. */
  readonly outputForce: number;
}

/**
 * Answers the least rod force at which the booster gives an output force: the inverse of `boosterOutput`.
 *
 * Equation: F_rod = (F_out − J) / k up to the knee, F_out − A_d Δp η after it; zero inside the jump-in.
 * Assumes: as `boosterOutput`.
 * Valid: output force 0 to 200 kN.
 *
 * @param input - booster; F_out, output force wanted, N
 * @returns N, force on the input rod; zero where the first touch already gives the output
 * @throws OutOfRangeError where an input cannot be
 * Source: [common-practice]
 * @example
 * boosterInput({ booster: { kind: 'hydraulic', gain: 4, greatestAssist: 3000 }, outputForce: 2000 }) // => 500
 */
export function boosterInput({ booster, outputForce }: BoosterInputInput): number {
  const { start, slope, limit } = boosterAssist(booster);
  requireRange('booster output force', outputForce, 'N', 0, 200_000);
  const assisted = (outputForce - start) / (1 + slope);
  return Math.max(0, assisted, outputForce - limit);
}
