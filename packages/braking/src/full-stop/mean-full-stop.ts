import { requireRange } from '@standstill/numerics';
import type { FullMarch } from './full-march.ts';
import { fullStop, fullStopWorkspace } from './full-stop.ts';
import type { FullStopInput } from './full-stop-input.ts';

export interface MeanFullStopInput extends FullStopInput {
  /** How many stops the mean is of, 1 to 1000. */
  readonly stops: number;
}

export interface MeanFullStop {
  /** m, mean distance; Infinity where one does not come to rest. */
  readonly distance: number;
  /** m, standard error of that mean: what the control's chance leaves open; Infinity where the distance is. */
  readonly standardError: number;
  /** s. */
  readonly time: number;
  /** 1. */
  readonly efficiency: number;
}

/** The golden section's fraction: its multiples fill 0 to 1 evenly, however many there are. */
const golden = (Math.sqrt(5) - 1) / 2;

const neverAtRest: MeanFullStop = {
  distance: Infinity,
  standardError: Infinity,
  time: Infinity,
  efficiency: 0,
};

/**
 * Answers how far a car with antilock goes on average: a single such stop is chaotic (a hair of speed decides which look of
 * the control finds a wheel past its threshold), and two set-ups are to be compared by means.
 *
 * Equation: mean over stops whose control looks first at phases {(i + ½) φ}, φ the golden section, braces the fraction.
 * Assumes: the phase of the control is as good a chance as any.
 * Valid: as `fullStop`. Without antilock all phases give one stop, and one is made.
 *
 * @param input - as for `fullStop`; how many stops
 * @param march - room to work in
 * @returns mean distance and its standard error, m; time, s; efficiency, 1
 * @throws OutOfRangeError where an input cannot be
 * Source: [geometry]
 * @example
 * meanFullStop({ setUp: exampleSetUp, road: exampleRoad, foot: { kind: 'ramp', force: 90, rampTime: 0.2 }, speed: 27.8, stops: 4 }).distance // => 77.3104
 */
export function meanFullStop(input: MeanFullStopInput, march: FullMarch = fullStopWorkspace()): MeanFullStop {
  const stops = Math.round(requireRange('stops of the mean', input.stops, '', 1, 1000));
  const { antilock } = input.setUp;
  if (antilock.kind === 'none' && !antilock.electronicRearLimit) {
    const { distance, time, efficiency } = fullStop(input, march);
    return { distance, standardError: 0, time, efficiency };
  }
  let distance = 0;
  let squares = 0;
  let time = 0;
  let efficiency = 0;
  for (let i = 0; i < stops; i += 1) {
    const place = (i + 0.5) * golden;
    const stop = fullStop({ ...input, controlPhase: place - Math.floor(place) }, march);
    if (!stop.cameToRest) return neverAtRest;
    const before = distance;
    distance += (stop.distance - before) / (i + 1);
    squares += (stop.distance - before) * (stop.distance - distance);
    time += stop.time / stops;
    efficiency += stop.efficiency / stops;
  }
  const standardError = stops > 1 ? Math.sqrt(squares / (stops - 1) / stops) : 0;
  return { distance, standardError, time, efficiency };
}
