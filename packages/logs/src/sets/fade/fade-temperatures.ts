import { linearFit } from '@standstill/numerics';
import type { IntervalValue } from '../stop-set.ts';
import type { FadeStop, FadeTemperature } from './fade.ts';

/** K that temperatures must span before a distance is set against them (assumed). */
const leastSpan = 10;

/**
 * How each temperature channel goes with the stops: its slope over all that have a value, and what the distances that
 * count do with it.
 *
 * @param stops - of a fade set
 * @returns one for each channel, in the order of first appearance; °C, K per stop, m per 100 K
 */
export function fadeTemperatures(stops: readonly FadeStop[]): readonly FadeTemperature[] {
  const channels = new Set(stops.flatMap(({ temperatures }) => temperatures.map(({ channel }) => channel)));
  return [...channels].map((channel) => {
    const read = stops.flatMap((stop) => {
      const found = stop.temperatures.find((each) => each.channel === channel);
      return found === undefined ? [] : [{ ...stop, start: found.start }];
    });
    const starts = read.map(({ start }) => start);
    const counted = read.filter((stop) => stop.counted && stop.distance !== null);
    return {
      channel,
      first: starts[0]!,
      highest: Math.max(...starts),
      slope: slopeOf(
        read.map(({ number }) => number),
        starts,
      ),
      distancePer100K: distancePer100K(counted),
    };
  });
}

function distancePer100K(counted: readonly (FadeStop & { readonly start: number })[]): IntervalValue | null {
  const starts = counted.map(({ start }) => start);
  if (Math.max(...starts) - Math.min(...starts) < leastSpan) return null;
  return slopeOf(
    starts.map((start) => start / 100),
    counted.map(({ distance }) => distance ?? 0),
  );
}

function slopeOf(xs: readonly number[], ys: readonly number[]): IntervalValue | null {
  if (xs.length < 3) return null;
  const { slope, slopeInterval } = linearFit(xs, ys);
  return { value: slope, ...slopeInterval };
}
