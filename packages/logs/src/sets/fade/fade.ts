import type { DistanceDefinition, IntervalValue, LeftOutStop } from '../stop-set.ts';

/** A stop of a fade set; what does not count keeps its number. */
export interface FadeStop {
  /** 1-based over all stops of the set, in the order driven. */
  readonly number: number;
  /** 0-based place in the set's stops. */
  readonly index: number;
  /** m, from the nominal speed; null where the stop never crossed the speed gate. */
  readonly distance: number | null;
  readonly distanceStandardError: number;
  /** s since the stop before ended; null for the first of a log. */
  readonly restedFor: number | null;
  /** °C at the start. */
  readonly temperatures: readonly { readonly channel: string; readonly start: number }[];
  readonly counted: boolean;
  /** Why it does not count; null where it does. */
  readonly reason: string | null;
}

/** How a temperature channel goes with the stops, at the start of each. */
export interface FadeTemperature {
  readonly channel: string;
  /** °C. */
  readonly first: number;
  readonly highest: number;
  /** K per stop; null under three stops with a value. */
  readonly slope: IntervalValue | null;
  /** m longer for each 100 K hotter; null under three stops that count, or where they span less than 10 K. */
  readonly distancePer100K: IntervalValue | null;
}

/** How distance goes with the number of the stop. */
export interface FadeOfStops {
  readonly ok: true;
  readonly name: string;
  readonly definition: DistanceDefinition;
  readonly nominalSpeed: number;
  readonly stops: readonly FadeStop[];
  /** Stops that count. */
  readonly counted: number;
  /** m per stop, of the line through the distances that count. */
  readonly slope: IntervalValue;
  readonly slopeStandardError: number;
  readonly degreesOfFreedom: number;
  /** m, last over first by that line. */
  readonly growth: IntervalValue;
  /** % of the first by that line. */
  readonly growthPercent: IntervalValue;
  /** m, scatter about the line. */
  readonly residualStandardDeviation: number;
  /** Bend of a parabola through the same distances, m per stop²; null under four stops. */
  readonly curvature: IntervalValue | null;
  /** Whether a straight line is not enough: the bend's interval leaves out zero. */
  readonly bends: boolean;
  readonly temperatures: readonly FadeTemperature[];
}

/** A set with fewer than three stops that count, through which no line says anything. */
export interface TooFewToFade {
  readonly ok: false;
  readonly code: 'too-few-to-fade';
  readonly counted: number;
  readonly leftOut: readonly LeftOutStop[];
}

export interface FadeOptions {
  /** m/s. */
  readonly nominalSpeed: number;
  readonly definition: DistanceDefinition;
}
