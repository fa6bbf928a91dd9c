import type { FadeOfStops } from '@standstill/logs';
import type { FadeSetResult } from '../../results/fade-report.ts';
import type { RunSet } from '../sets/run-set.ts';
import { setStops } from '../stop-set-of.ts';

/** A fade set as published; a stop that never crossed the speed gate has no distance to show and is told in a warning. */
export function fadeSetResult(fade: FadeOfStops, set: RunSet): FadeSetResult {
  const stops = setStops(set);
  return {
    name: fade.name,
    stops: fade.stops.flatMap(({ index, distance, temperatures, ...one }) => {
      const from = stops[index];
      if (distance === null || from === undefined) return [];
      return [
        {
          number: one.number,
          log: from.log,
          start_s: from.stop.start_s,
          distance_m: distance,
          distanceStandardError_m: one.distanceStandardError,
          restedFor_s: one.restedFor,
          temperatures: temperatures.map(({ channel, start }) => ({ channel, start_C: start })),
          counted: one.counted,
          reason: one.reason,
        },
      ];
    }),
    slope_m_per_stop: { ...fade.slope },
    growth_m: { ...fade.growth },
    growthPercent: { ...fade.growthPercent },
    bends: fade.bends,
    temperatures: fade.temperatures.map(({ channel, first, highest, slope, distancePer100K }) => ({
      channel,
      first_C: first,
      highest_C: highest,
      slope_C_per_stop: slope === null ? null : { ...slope },
      distance_m_per_100K: distancePer100K === null ? null : { ...distancePer100K },
    })),
  };
}
