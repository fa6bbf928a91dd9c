import type { AxleBrake } from '../set-up/axle-brake.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { knockBackGap, type Hubs } from '../travel/knock-back-gap.ts';

/** Both axles' hubs. */
export interface AxleHubs {
  readonly front: Hubs;
  readonly rear: Hubs;
}

/**
 * Answers the set-up as the first push after a bend finds it: with the pads knocked back.
 *
 * Equation: running clearance + `knockBackGap`, at both axles.
 * Assumes: as `knockBackGap`; a drum does not push its shoes back.
 *
 * @param setUp - the set-up
 * @param hubs - run-out, bearing play and axle float of both axles, m
 * @returns the set-up with the wider running clearances, m
 * @throws OutOfRangeError where an input cannot be
 * Source: [common-practice]
 * @example
 * knockedBack(exampleSetUp, { front: { runOut: 1e-4, bearingPlay: 0, axleFloat: 0 }, rear: { runOut: 0, bearingPlay: 0, axleFloat: 0 } }).frontBrake.runningClearance // => 0.00015
 */
export function knockedBack(setUp: SetUp, hubs: AxleHubs): SetUp {
  return {
    ...setUp,
    frontBrake: pushedApart(setUp.frontBrake, hubs.front),
    rearBrake: pushedApart(setUp.rearBrake, hubs.rear),
  };
}

function pushedApart(brake: AxleBrake, hubs: Hubs): AxleBrake {
  const gap = knockBackGap(hubs);
  return brake.rotor.kind === 'drum' ? brake : { ...brake, runningClearance: brake.runningClearance + gap };
}
