import type { FoundStop } from '../stops/found-stop.ts';

/** Stops of one set-up, in the order in which they were driven. */
export interface StopSet {
  readonly name: string;
  readonly stops: readonly FoundStop[];
}

/** From where a stop's distance runs; the two are never mixed. */
export type DistanceDefinition = 'application' | 'gate';

/** A value with its 95 % interval. */
export interface IntervalValue {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** What a set of stops amounts to. All distances in m. */
export interface SetFigures {
  readonly name: string;
  /** Distances that count, in run order. */
  readonly distances: readonly number[];
  /** Stops that don't, with the reason of their first flag that excludes. */
  readonly leftOut: readonly { readonly number: number; readonly reason: string }[];
  /** Its interval holds the scatter of the stops and what they share. */
  readonly mean: IntervalValue;
  /** m, standard error that all stops share, because the delay of their logger is not known; more stops don't help. */
  readonly sharedError: number;
  readonly standardDeviation: number;
  readonly best: number;
  readonly worst: number;
  /** m per run in run order; null under three runs. */
  readonly trend: IntervalValue | null;
  /** m, root mean square of the single stops' standard errors: without what they share: how much of the spread is the measuring. */
  readonly measuringError: number;
}
