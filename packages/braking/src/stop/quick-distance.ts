import { stopWorkspace } from './quick-stop.ts';
import type { StopInput } from './stop-input.ts';
import type { StopMarch } from './stop-march.ts';

/**
 * Answers the distance of `quickStop` alone, bit by bit the same, for those who ask for nothing else of very many stops: no
 * books are kept of where the energy went, of temperatures, and of what held the stop back.
 *
 * Equation: as `quickStop`.
 * Assumes: as `quickStop`.
 * Valid: as `quickStop`.
 *
 * @param input - set-up, road, foot; v_0, speed, m/s; rotor temperatures, °C; driver's share, 1
 * @param march - room to work in, from `stopWorkspace`; kept by the caller who makes many stops
 * @returns m from the first touch of the pedal to rest; Infinity where the car does not come to rest
 * @throws OutOfRangeError where an input cannot be
 * Source: [gillespie], [limpert]
 * @example
 * quickDistance({ setUp: exampleSetUp, road: exampleRoad, foot: { force: 300, rampTime: 0.2 }, speed: 27.8 }) // => 47.06
 */
export function quickDistance(input: StopInput, march: StopMarch = stopWorkspace()): number {
  march.startForDistance(input);
  march.run();
  return march.cameToRest ? march.distance : Infinity;
}
