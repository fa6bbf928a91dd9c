import { contrastOfMeans, requireRange, summarize, type TTest } from '@standstill/numerics';
import { countedDistances, type CountedDistances } from '../counted-distances.ts';
import { setFigures } from '../set-figures.ts';
import { setTooSmall, type SetTooSmall } from '../set-too-small.ts';
import type { DistanceDefinition, IntervalValue, SetFigures, StopSet } from '../stop-set.ts';
import { withSharedError } from '../with-shared-error.ts';

/** The old set-up once more after the new one. */
export interface RepeatedSets {
  readonly before: StopSet;
  readonly after: StopSet;
  readonly repeat: StopSet;
}

/** Another car, unchanged, driven beside the changed one before and after. */
export interface ReferencedSets {
  readonly before: StopSet;
  readonly after: StopSet;
  readonly referenceBefore: StopSet;
  readonly referenceAfter: StopSet;
}

export interface ControlOptions {
  /** m/s. */
  readonly nominalSpeed: number;
  readonly definition: DistanceDefinition;
  /** Whether each car kept one logger and signal, so that its unknown delay drops out; true where absent. */
  readonly sameLogger?: boolean;
  /** Share of the way from before to repeat at which the new set-up was driven, 0 to 1; halfway where absent. */
  readonly place?: number;
}

/** A role of a set in a controlled comparison. */
export type ControlledSet = 'before' | 'after' | 'repeat' | 'reference-before' | 'reference-after';

/** A difference with what moved without the change taken out. Distances in m, negative is shorter. */
export interface ControlledDifference {
  readonly ok: true;
  readonly kind: 'repeat' | 'reference-car';
  /** Repeat minus before, or the reference car's after minus its before. */
  readonly drift: IntervalValue;
  /** Whether the drift's interval leaves out zero. */
  readonly drifts: boolean;
  readonly difference: IntervalValue;
  readonly standardError: number;
  /** By Welch and Satterthwaite, 1. */
  readonly degreesOfFreedom: number;
  /** Of no difference, by the scatter alone, 0 to 1; NaN where nothing spreads and nothing differs. */
  readonly p: number;
  /** The sets that control: the repeat, or the reference car's two. */
  readonly control: readonly SetFigures[];
}

type Part = readonly [role: ControlledSet, set: StopSet, inDifference: number, inDrift: number];

/**
 * The difference that a change makes, controlled for what moves without it (tires, surface, weather, driver): by a
 * repeat of the old set-up after the new one, or by a reference car that was not changed.
 *
 * Equation: repeat: drift x̄r − x̄b, difference x̄a − (1 − w) x̄b − w x̄r, w the place of the new set-up between the two
 * (1/2 halfway: a drift that is straight over time drops out). Reference car: drift x̄ra − x̄rb, difference
 * (x̄a − x̄b) − (x̄ra − x̄rb). Interval by v_i = c_i² s_i²/n_i, ν = (Σ v)²/Σ(v²/(n − 1)), widened by what the loggers'
 * delays don't share.
 * Assumes: runs independent, about normal within each set; the drift goes evenly with time (repeat) or moves both cars
 * by the same distance (reference car).
 * Valid: two stops that count in each set.
 *
 * @param sets - before and after, with a repeat or with the reference car's two sets
 * @param options - nominal speed, m/s; definition of the distance; loggers; w, 1
 * @returns drift and difference, m; or which set has too few stops that count
 * @throws OutOfRangeError where w is not from 0 to 1
 * Source: [satterthwaite-1946], [nist-handbook]
 */
export function controlledDifference(
  sets: RepeatedSets | ReferencedSets,
  options: ControlOptions,
): ControlledDifference | SetTooSmall<ControlledSet> {
  const place = requireRange('place of the new set-up', options.place ?? 0.5, '', 0, 1);
  const parts = partsOf(sets, place).map(([role, set, ...weights]) => {
    const counted = countedDistances(set, options.definition, options.nominalSpeed);
    return { role, set, counted, weights };
  });
  const small = setTooSmall(parts.map(({ role, counted }) => [role, counted] as const));
  if (small !== undefined) return small;
  const contrast = (which: 0 | 1): Contrast =>
    contrastOf(
      parts.map(({ counted, weights }) => ({ counted, weight: weights[which] })),
      options.sameLogger ?? true,
    );
  const [whole, drift] = [contrast(0), contrast(1)];
  return {
    ok: true,
    kind: 'repeat' in sets ? 'repeat' : 'reference-car',
    drift: drift.interval,
    drifts: drift.interval.low > 0 || drift.interval.high < 0,
    difference: whole.interval,
    standardError: whole.test.standardError,
    degreesOfFreedom: whole.test.degreesOfFreedom,
    p: whole.test.p,
    control: parts.slice(2).map(({ set, counted }) => setFigures(set.name, counted)),
  };
}

/** Role, set, weight in the difference, weight in the drift. */
function partsOf(sets: RepeatedSets | ReferencedSets, place: number): readonly Part[] {
  const { before, after } = sets;
  if ('repeat' in sets)
    return [
      ['before', before, place - 1, -1],
      ['after', after, 1, 0],
      ['repeat', sets.repeat, -place, 1],
    ];
  return [
    ['before', before, -1, 0],
    ['after', after, 1, 0],
    ['reference-before', sets.referenceBefore, 1, -1],
    ['reference-after', sets.referenceAfter, -1, 1],
  ];
}

interface Contrast {
  readonly test: TTest;
  readonly interval: IntervalValue;
}

function contrastOf(
  parts: readonly { readonly counted: CountedDistances; readonly weight: number }[],
  sameLogger: boolean,
): Contrast {
  const used = parts.filter(({ weight }) => weight !== 0);
  const test = contrastOfMeans(
    used.map(({ counted, weight }) => ({ ...summarize(counted.distances), weight })),
  );
  const shared = used.map(({ counted, weight }) => weight * meanOf(counted.sharedErrors));
  const left = sameLogger ? Math.abs(shared.reduce((sum, error) => sum + error, 0)) : Math.hypot(...shared);
  return {
    test,
    interval: withSharedError({ value: test.difference, low: test.low, high: test.high }, left),
  };
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
