import { requireRange } from '@standstill/numerics';
import type { SetUp } from '../set-up/set-up.ts';
import { boosterInput } from './booster-input.ts';
import { masterCylinderGains } from './master-cylinder-gains.ts';
import { rodForce } from './rod-force.ts';

export interface PedalForceForInput {
  readonly setUp: SetUp;
  /** p_f, Pa, front line pressure wanted. */
  readonly frontPressure: number;
}

/**
 * Answers the least pedal force at which the front line reaches a pressure: the inverse of `linePressures`.
 *
 * Equation: F_p = F_rod / (i_p η_p), F_rod by `boosterInput` from F_m = p_f over the master cylinder's gain.
 * Assumes: as `linePressures`.
 * Valid: pressure 0 to 60 MPa.
 *
 * @param input - set-up; p_f, front line pressure wanted, Pa
 * @returns N at the pedal pad; zero where the booster's jump-in already gives that pressure at the first touch
 * @throws OutOfRangeError where an input cannot be
 * Source: [gillespie]
 * @example
 * pedalForceFor({ setUp: exampleSetUp, frontPressure: 5e6 }) // => 129.585
 */
export function pedalForceFor({ setUp, frontPressure }: PedalForceForInput): number {
  const gain = masterCylinderGains(setUp.masterCylinder).front;
  const outputForce = requireRange('front line pressure', frontPressure, 'Pa', 0, 60e6) / gain;
  const rod = boosterInput({ booster: setUp.booster, outputForce });
  return rod / rodForce({ pedal: setUp.pedal, force: 1 });
}
