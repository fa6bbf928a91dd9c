import type { FadeSetResult } from '@standstill/workshop';
import type { Measure } from '../units/measure.ts';

/** What stops in a row are printed with. */
export interface FadeUnits {
  readonly distance: Measure;
  readonly temperature: Measure;
}

/** A set of stops in a row in the units of the person, as it is drawn. */
export interface DrawnFade {
  readonly from: FadeSetResult;
  /** Told apart by shape and line, not by color alone. */
  readonly dot: string;
  readonly line: string;
  readonly stops: readonly {
    readonly number: number;
    readonly distance: number;
    readonly counted: boolean;
  }[];
  /** Both ends of the fitted line; null where there is none. */
  readonly fit: readonly { readonly number: number; readonly distance: number }[] | null;
  readonly channels: readonly {
    readonly channel: string;
    readonly points: readonly { readonly number: number; readonly value: number }[];
  }[];
}

const dots = ['ink paper-fill', 'accent accent-fill'] as const;
const lines = ['ink dashed', 'accent'] as const;

/** Lays out one set: the first open and dashed, the second filled and drawn through. */
export function drawnFade(
  set: FadeSetResult,
  index: number,
  { distance, temperature }: FadeUnits,
): DrawnFade {
  const names = [
    ...new Set(set.stops.flatMap(({ temperatures }) => temperatures.map(({ channel }) => channel))),
  ];
  return {
    from: set,
    dot: dots[index] ?? dots[1],
    line: lines[index] ?? lines[1],
    stops: set.stops.map(({ number, distance_m, counted }) => ({
      number,
      distance: distance.inUnit(distance_m),
      counted,
    })),
    fit:
      fitted(set)?.map(({ number, distance_m }) => ({ number, distance: distance.inUnit(distance_m) })) ??
      null,
    channels: names.map((channel) => ({
      channel,
      points: set.stops.flatMap(({ number, temperatures }) =>
        temperatures
          .filter((one) => one.channel === channel)
          .map(({ start_C }) => ({ number, value: temperature.inUnit(start_C) })),
      ),
    })),
  };
}

/** The fitted line goes through the middle of the stops that it was fitted to. */
function fitted({ stops, slope_m_per_stop: slope }: FadeSetResult) {
  const counted = stops.filter((stop) => stop.counted);
  const [first, last] = [counted[0], counted.at(-1)];
  if (slope === null || !first || !last || first === last) return null;
  const middle = mean(counted.map(({ number }) => number));
  const height = mean(counted.map(({ distance_m }) => distance_m));
  return [first, last].map(({ number }) => ({
    number,
    distance_m: height + slope.value * (number - middle),
  }));
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
