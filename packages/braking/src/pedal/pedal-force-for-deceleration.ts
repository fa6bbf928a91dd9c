import { bracketedRoot, requireRange } from '@standstill/numerics';
import { strongestFoot } from '../balance/strongest-foot.ts';
import { linePressures } from '../foot-to-pressure/line-pressures.ts';
import type { Braking } from '../balance/deceleration-under.ts';
import { brakedDeceleration } from './braked-deceleration.ts';
import type { CircuitShare } from './circuit.ts';

export interface PedalForceForDecelerationInput extends Braking {
  /** a, m/s², wanted. */
  readonly deceleration: number;
  /** Part of each axle that brakes, 1; all of both where not given. */
  readonly live?: CircuitShare;
}

/**
 * Answers the least pedal force that slows the car by as much as wanted.
 *
 * Equation: root of `brakedDeceleration` at `linePressures` − a over the force.
 * Assumes: as `brakedDeceleration`; the pedal has the travel (see `circuitLost` and `pedalTravel`).
 * Valid: wanted deceleration 0.1 to 20 m/s²; force up to 1000 N.
 *
 * @param input - set-up, road and speed, m/s; a, deceleration wanted, m/s²; share of each axle that brakes, 1
 * @returns N at the pedal pad; 0 where the first touch already does it, undefined where 1000 N does not
 * @throws OutOfRangeError where an input cannot be
 * Source: [gillespie]
 * @example
 * pedalForceForDeceleration({ setUp: exampleSetUp, road: exampleRoad, deceleration: 5 }) // => 85.0597
 */
export function pedalForceForDeceleration(input: PedalForceForDecelerationInput): number | undefined {
  const { setUp } = input;
  const wanted = requireRange('deceleration wanted', input.deceleration, 'm/s²', 0.1, 20);
  const over = (pedalForce: number): number => {
    const { front, rear } = linePressures({ setUp, pedalForce });
    return brakedDeceleration({ ...input, frontPressure: front, rearPressure: rear }) - wanted;
  };
  if (over(1e-6) >= 0) return 0;
  if (over(strongestFoot) < 0) return undefined;
  return bracketedRoot(over, { low: 1e-6, high: strongestFoot, tolerance: 1e-7 });
}
