import { distanceOf } from '../distance-of.ts';
import type { CountedDistances } from '../counted-distances.ts';
import type { StopSet } from '../stop-set.ts';
import type { FadeOptions, FadeStop } from './fade.ts';

/**
 * All stops of a fade set with number, rest before, temperatures and whether they count.
 *
 * @param set - the stops in the order driven
 * @param counted - which of them count
 * @param options - nominal speed, m/s; definition of the distance
 * @returns one for each stop; m, s, °C
 */
export function fadeStops(
  { stops }: StopSet,
  { leftOut }: CountedDistances,
  { definition, nominalSpeed }: FadeOptions,
): readonly FadeStop[] {
  return stops.map((stop, index) => {
    const previous = stops[index - 1];
    const isFirstOfLog =
      previous === undefined || stop.number <= previous.number || stop.startTime < previous.endTime;
    const reason = leftOut.find((out) => out.index === index)?.reason ?? null;
    return {
      number: index + 1,
      index,
      distance: distanceOf(stop, definition, nominalSpeed),
      distanceStandardError: stop.distanceStandardError,
      restedFor: isFirstOfLog ? null : stop.startTime - previous.endTime,
      temperatures: stop.temperatures.map(({ channel, start }) => ({ channel, start })),
      counted: reason === null,
      reason,
    };
  });
}
