import type { FoundStop } from '../stops/found-stop.ts';
import { distanceOf } from './distance-of.ts';
import { reasonLeftOut } from './reason-left-out.ts';
import type { DistanceDefinition, JudgedStop, LeftOutStop, StopCovariates, StopSet } from './stop-set.ts';

/** The distances of a set that count, and the stops that don't. */
export interface CountedDistances {
  /** m, in run order. */
  readonly distances: readonly number[];
  /** 1-based run number of each. */
  readonly runs: readonly number[];
  /** 0-based place of each in the set's stops. */
  readonly indices: readonly number[];
  /** What was written down of each. */
  readonly covariates: readonly StopCovariates[];
  /** m, standard errors of these, each stop's own; what all stops of a logger share is not in them. */
  readonly standardErrors: readonly number[];
  /** m, what the unknown delay of the logger makes of each, one standard deviation; all in one direction. */
  readonly sharedErrors: readonly number[];
  readonly leftOut: readonly LeftOutStop[];
  readonly judged: readonly JudgedStop[];
}

/**
 * Takes from a set the distances by one definition: corrected to the nominal speed from the application on, or from
 * the speed gate as they are. A stop with a flag that excludes does not count, whatever its distance, unless a person
 * restored it; a stop that a person rejected does not count either. What does not count keeps its run number, because it
 * warmed the brakes all the same; a gentle stop, as in traffic, is no run.
 *
 * @param set - the stops in run order
 * @param definition - from where the distance runs
 * @param nominalSpeed - m/s; a correction that a stop already carries is kept
 * @returns the distances and what was left out
 */
export function countedDistances(
  set: StopSet,
  definition: DistanceDefinition,
  nominalSpeed: number,
): CountedDistances {
  const judged: JudgedStop[] = [];
  const leftOut: LeftOutStop[] = [];
  const kept: { index: number; run: number; stop: FoundStop; distance: number }[] = [];
  let run = 0;
  set.stops.forEach((stop, index) => {
    const judgement = set.judgements?.[index] ?? null;
    const distance = distanceOf(stop, definition, nominalSpeed);
    const reason = reasonLeftOut(stop, judgement) ?? (distance === null ? neverCrossed : null);
    const { number } = stop;
    if (reason === null || !stop.flags.some(({ code }) => code === 'gentle')) run += 1;
    if (judgement !== null) judged.push({ index, number, ...judgement, counted: reason === null });
    if (reason !== null) leftOut.push({ index, number, reason });
    else if (distance !== null) kept.push({ index, run, stop, distance });
  });
  return {
    distances: kept.map(({ distance }) => distance),
    runs: kept.map(({ run: own }) => own),
    indices: kept.map(({ index }) => index),
    covariates: kept.map(({ index }) => set.covariates?.[index] ?? {}),
    standardErrors: kept.map(({ stop }) => ownError(stop)),
    sharedErrors: kept.map(({ stop }) =>
      definition === 'gate' ? 0 : (stop.startDelayError * nominalSpeed ** 2) / stop.entrySpeed,
    ),
    leftOut,
    judged,
  };
}

const neverCrossed = 'The stop never crossed the nominal speed downward.';

/** The stop's standard error without the delay that it shares with the others. */
function ownError({ distanceStandardError: whole, startDelayError, entrySpeed }: FoundStop): number {
  return Math.sqrt(Math.max(0, whole ** 2 - (startDelayError * entrySpeed) ** 2));
}
