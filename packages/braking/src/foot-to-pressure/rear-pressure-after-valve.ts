import { requireRange } from '@standstill/numerics';
import type { RearValve } from '../set-up/rear-valve.ts';

export interface RearPressureInput {
  readonly rearValve: RearValve;
  /** p, Pa, pressure from the master cylinder on the rear line. */
  readonly inletPressure: number;
}

/**
 * Answers the rear line pressure behind the proportioning valve.
 *
 * Equation: p_r = p up to the knee p_k; p_r = p_k + s (p − p_k) above it.
 * Assumes: rising pressure; hysteresis on release is not modeled.
 * Valid: knee 0 to 60 MPa; slope 0 to 1.
 *
 * @param input - rear valve with p_k, knee pressure, Pa, and s, slope, 1; p, inlet pressure, Pa
 * @returns Pa, pressure in the rear brakes
 * @throws OutOfRangeError where an input cannot be
 * Source: [gillespie]
 * @example
 * rearPressureAfterValve({ rearValve: { kind: 'proportioning', kneePressure: 2e6, slope: 0.3 }, inletPressure: 5e6 }) // => 2900000
 */
export function rearPressureAfterValve({ rearValve, inletPressure }: RearPressureInput): number {
  requireRange('line pressure', inletPressure, 'Pa', 0, 1e9);
  if (rearValve.kind === 'none') return inletPressure;
  requireRange('proportioning knee pressure', rearValve.kneePressure, 'Pa', 0, 60e6);
  requireRange('proportioning slope', rearValve.slope, '', 0, 1);
  const over = Math.max(0, inletPressure - rearValve.kneePressure);
  return Math.min(inletPressure, rearValve.kneePressure) + rearValve.slope * over;
}
