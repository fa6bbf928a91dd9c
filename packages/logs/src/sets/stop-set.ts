import type { FoundStop } from '../stops/found-stop.ts';

/** A condition of a single stop that may move its distance without the set-up having to do with it. */
export type CovariateName =
  'direction' | 'headWind' | 'surfaceTemperature' | 'tireTemperature' | 'startTemperature';

/** Conditions of one stop: direction +1 out and -1 back, head wind in m/s (tail wind negative), temperatures in °C. */
export type StopCovariates = Readonly<Partial<Record<CovariateName, number>>>;

/** What a person said of a stop, whatever its flags say. */
export interface StopJudgement {
  /** `rejected` leaves a stop out; `restored` counts it although a flag excludes it. */
  readonly verdict: 'rejected' | 'restored';
  readonly reason: string;
}

/** Stops of one set-up, in the order in which they were driven. */
export interface StopSet {
  readonly name: string;
  readonly stops: readonly FoundStop[];
  /** One for each stop, in the same order; undefined or without a name where it was not written down. */
  readonly covariates?: readonly (StopCovariates | undefined)[];
  /** One for each stop, in the same order; null or undefined where nobody judged. */
  readonly judgements?: readonly (StopJudgement | null | undefined)[];
}

/** From where a stop's distance runs; the two are never mixed. */
export type DistanceDefinition = 'application' | 'gate';

/** A value with its 95 % interval. */
export interface IntervalValue {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A stop that does not count. */
export interface LeftOutStop {
  /** 0-based place in the set's stops, for sets that come from several logs. */
  readonly index: number;
  /** The stop's number in its log. */
  readonly number: number;
  readonly reason: string;
}

/** A stop that a person rejected or restored. */
export interface JudgedStop extends LeftOutStop {
  readonly verdict: StopJudgement['verdict'];
  /** Whether it counts now; a stop whose speed is not the car's does not, whoever restores it. */
  readonly counted: boolean;
}

/** What a set of stops amounts to. All distances in m. */
export interface SetFigures {
  readonly name: string;
  /** Distances that count, in run order. */
  readonly distances: readonly number[];
  /** 1-based run number of each; a run that does not count keeps its number, a stop in traffic has none. */
  readonly runs: readonly number[];
  /** Stops that don't count, with a person's reason or that of their first flag that excludes. */
  readonly leftOut: readonly LeftOutStop[];
  readonly judged: readonly JudgedStop[];
  /** Its interval holds the scatter of the stops and what they share. */
  readonly mean: IntervalValue;
  /** m, standard error that all stops share, because the delay of their logger is not known; more stops don't help. */
  readonly sharedError: number;
  readonly standardDeviation: number;
  /** Where the spread lies that so few stops come from. */
  readonly standardDeviationInterval: { readonly low: number; readonly high: number };
  readonly best: number;
  readonly worst: number;
  /** m per run in run order; null under three runs. */
  readonly trend: IntervalValue | null;
  /** m, the first run over the line through the others; null under four runs or where the first does not count. */
  readonly warmUp: IntervalValue | null;
  /** m, root mean square of the single stops' standard errors: without what they share: how much of the spread is the measuring. */
  readonly measuringError: number;
}
