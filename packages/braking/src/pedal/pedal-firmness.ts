import { requireRange } from '@standstill/numerics';
import type { SetUp } from '../set-up/set-up.ts';
import { pedalTravel } from '../travel/pedal-travel.ts';

export interface PedalFirmnessInput {
  readonly setUp: SetUp;
  /** F_p, N at the pedal pad. */
  readonly pedalForce: number;
}

/** N either side of the force. */
const step = 2;

/**
 * Answers how firm the pedal feels at a force: how much more force it takes for more travel.
 *
 * Equation: k = ΔF / Δs from 2 N under to 2 N over the force.
 * Assumes: as `pedalTravel`. At the knee of a booster, a valve or a hose's table it is the mean of both sides.
 * Valid: pedal force 3 to 4998 N. Above 1e9 N/m, where next to nothing gives, 1e9 is answered.
 *
 * @param input - set-up; F_p, pedal force, N
 * @returns N/m at the pedal pad
 * @throws OutOfRangeError where an input cannot be
 * Source: [textbook-formula]
 * @example
 * pedalFirmness({ setUp: exampleSetUp, pedalForce: 200 }) // => 8630.98
 */
export function pedalFirmness({ setUp, pedalForce }: PedalFirmnessInput): number {
  requireRange('pedal force', pedalForce, 'N', 3, 5000 - step);
  const light = pedalTravel({ setUp, pedalForce: pedalForce - step }).travel;
  const hard = pedalTravel({ setUp, pedalForce: pedalForce + step }).travel;
  return (2 * step) / Math.max(hard - light, 2 * step * 1e-9);
}
