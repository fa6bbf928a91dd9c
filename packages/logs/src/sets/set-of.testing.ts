import type { FoundStop } from '../stops/found-stop.ts';
import type { StopSet } from './stop-set.ts';

/** m/s, 60 mph. */
export const sixty = 26.8224;

/** A made stop from 60 mph of a given distance, m, the number-th of its log. */
export function madeStop(distance: number, number = 1, more: Partial<FoundStop> = {}): FoundStop {
  return {
    number,
    startTime: 60 * number,
    endTime: 60 * number + 3,
    clock: null,
    startBy: 'brake-switch',
    entrySpeed: sixty,
    applicationDistance: distance,
    distanceStandardError: 0.3,
    startDelayError: 0,
    gateDistance: distance - 1,
    correctedDistance: distance,
    duration: 3,
    meanDecelerationByDistance: 8,
    meanDecelerationByTime: 8,
    meanFullyDevelopedDeceleration: 8,
    peakDeceleration: 9,
    buildUpTime: 0.3,
    sampleRate: 10,
    flags: [],
    temperatures: [],
    developedPressure: null,
    developedPedalForce: null,
    heading: null,
    trace: {
      time: new Float64Array(0),
      speed: new Float64Array(0),
      speedStandardError: new Float64Array(0),
      deceleration: new Float64Array(0),
    },
    ...more,
  };
}

/** A set of made stops of given distances, m, in run order. */
export function setOf(distances: readonly number[], more: Partial<StopSet> = {}): StopSet {
  return { name: 'made', stops: distances.map((distance, index) => madeStop(distance, index + 1)), ...more };
}
