import type { SetUp } from '../set-up/set-up.ts';
import { boosterOutput } from './booster-output.ts';
import { pressuresFromMasterForce, type AxlePressures } from './pressures-from-master-force.ts';
import { rodForce } from './rod-force.ts';

export interface LinePressuresInput {
  readonly setUp: SetUp;
  /** F_p, N at the pedal pad. */
  readonly pedalForce: number;
}

export interface LinePressures extends AxlePressures {
  /** True once the booster's assist is used up. */
  readonly boosterRunOut: boolean;
}

/**
 * Answers the pressure in the front and rear brakes for a force at the pedal pad.
 *
 * Equation: foot → `rodForce` → `boosterOutput` → `pressuresFromMasterForce`.
 * Assumes: slow application (no orifice lag), cylinder not bottomed (see `pedalTravel`), ABS and EBD not acting.
 * Valid: pedal force 0 to 5000 N.
 *
 * @param input - set-up; F_p, pedal force, N
 * @returns p_f and p_r, pressures in the front and rear brakes, Pa; and whether the booster has run out
 * @throws OutOfRangeError where an input cannot be
 * Source: [gillespie]
 * @example
 * linePressures({ setUp: exampleSetUp, pedalForce: 250 }).front // => 8664350
 */
export function linePressures({ setUp, pedalForce }: LinePressuresInput): LinePressures {
  const output = boosterOutput({
    booster: setUp.booster,
    rodForce: rodForce({ pedal: setUp.pedal, force: pedalForce }),
  });
  const pressures = pressuresFromMasterForce({
    masterCylinder: setUp.masterCylinder,
    rearValve: setUp.rearValve,
    masterForce: output.force,
  });
  return { front: pressures.front, rear: pressures.rear, boosterRunOut: output.runOut };
}
