import { requireRange } from '@standstill/numerics';
import type { MasterCylinder } from '../set-up/master-cylinder.ts';
import type { RearValve } from '../set-up/rear-valve.ts';
import { rearPressureAfterValve } from './rear-pressure-after-valve.ts';
import { masterCylinderGains } from './master-cylinder-gains.ts';

export interface PressuresFromMasterForceInput {
  readonly masterCylinder: MasterCylinder;
  readonly rearValve: RearValve;
  /** F_m, N, force on the master cylinder or on the balance bar. */
  readonly masterForce: number;
}

export interface AxlePressures {
  /** p_f, Pa. */
  readonly front: number;
  /** p_r, Pa, behind the rear valve. */
  readonly rear: number;
}

/**
 * Answers the line pressures that a force on the master cylinder (or on the balance bar) makes.
 *
 * Equation: tandem: p = η F_m / (π D²/4) in both circuits; balance bar: p_f = η b F_m / A_f and p_r = η (1 − b) F_m / A_r;
 * then the rear valve.
 * Assumes: both pistons of a tandem cylinder see the same pressure; no seal friction but the efficiency.
 * Valid: force 0 to 100 kN.
 *
 * @param input - master cylinder; rear valve; F_m, force on it, N
 * @returns p_f and p_r, pressures in the front and rear brakes, Pa
 * @throws OutOfRangeError where an input cannot be
 * Source: [brake-sheet]
 * @example
 * pressuresFromMasterForce({ masterCylinder: { kind: 'tandem', bore: 0.02, stroke: 0.035, efficiency: 1 }, rearValve: { kind: 'none' }, masterForce: 948.9 }).front // => 3020440
 */
export function pressuresFromMasterForce(input: PressuresFromMasterForceInput): AxlePressures {
  const gains = masterCylinderGains(input.masterCylinder);
  const force = requireRange('master cylinder force', input.masterForce, 'N', 0, 100_000);
  const inletPressure = gains.rear * force;
  return {
    front: gains.front * force,
    rear: rearPressureAfterValve({ rearValve: input.rearValve, inletPressure }),
  };
}
