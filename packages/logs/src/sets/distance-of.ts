import { correctedDistance } from '../stops/corrected-distance.ts';
import type { FoundStop } from '../stops/found-stop.ts';
import type { DistanceDefinition } from './stop-set.ts';

/**
 * The distance of a stop by one definition, from the nominal speed.
 *
 * @param stop - as found; a correction that it already carries is kept
 * @param definition - from where the distance runs
 * @param nominalSpeed - m/s
 * @returns m; null where the stop never crossed the speed gate
 */
export function distanceOf(
  stop: FoundStop,
  definition: DistanceDefinition,
  nominalSpeed: number,
): number | null {
  if (definition === 'gate') return stop.gateDistance;
  const { applicationDistance: distance, entrySpeed } = stop;
  return stop.correctedDistance ?? correctedDistance({ distance, entrySpeed, nominalSpeed });
}
