import { correctedDistance } from '../stops/corrected-distance.ts';
import type { FoundStop } from '../stops/found-stop.ts';
import type { DistanceDefinition, StopSet } from './stop-set.ts';

/** The distances of a set that count, and the stops that don't. */
export interface CountedDistances {
  /** m, in run order. */
  readonly distances: readonly number[];
  /** m, standard errors of these, each stop's own; what all stops of a logger share is not in them. */
  readonly standardErrors: readonly number[];
  /** m, what the unknown delay of the logger makes of each, one standard deviation; all in one direction. */
  readonly sharedErrors: readonly number[];
  readonly leftOut: readonly { readonly number: number; readonly reason: string }[];
}

/**
 * Takes from a set the distances by one definition: corrected to the nominal speed from the application on, or from
 * the speed gate as they are. A stop with a flag that excludes does not count, whatever its distance.
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
  const distances: number[] = [];
  const standardErrors: number[] = [];
  const sharedErrors: number[] = [];
  const leftOut: { number: number; reason: string }[] = [];
  for (const stop of set.stops) {
    const excluding = stop.flags.find(({ severity }) => severity === 'excludes');
    const distance = distanceOf(stop, definition, nominalSpeed);
    if (excluding !== undefined) leftOut.push({ number: stop.number, reason: excluding.reason });
    else if (distance === null)
      leftOut.push({ number: stop.number, reason: 'The stop never crossed the nominal speed downward.' });
    else {
      distances.push(distance);
      standardErrors.push(ownError(stop));
      sharedErrors.push(
        definition === 'gate' ? 0 : (stop.startDelayError * nominalSpeed ** 2) / stop.entrySpeed,
      );
    }
  }
  return { distances, standardErrors, sharedErrors, leftOut };
}

/** The stop's standard error without the delay that it shares with the others. */
function ownError({ distanceStandardError: whole, startDelayError, entrySpeed }: FoundStop): number {
  return Math.sqrt(Math.max(0, whole ** 2 - (startDelayError * entrySpeed) ** 2));
}

function distanceOf(stop: FoundStop, definition: DistanceDefinition, nominalSpeed: number): number | null {
  if (definition === 'gate') return stop.gateDistance;
  const { applicationDistance: distance, entrySpeed } = stop;
  return stop.correctedDistance ?? correctedDistance({ distance, entrySpeed, nominalSpeed });
}
