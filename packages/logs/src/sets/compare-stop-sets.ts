import {
  bestOfGain,
  bootstrapDifference,
  permutationTest,
  runsNeeded,
  summarize,
  tInterval,
  welch,
  type BestOfGain,
  type PermutationTest,
  type TTest,
} from '@standstill/numerics';
import { adjustedDifference } from './adjusted/adjusted-difference.ts';
import type { AdjustedDifference, NotAdjusted } from './adjusted/adjustment.ts';
import { countedDistances, type CountedDistances } from './counted-distances.ts';
import { fewestRuns } from './fewest-runs.ts';
import { hiddenError } from './hidden-error.ts';
import { setFigures } from './set-figures.ts';
import { setTooSmall, type SetTooSmall } from './set-too-small.ts';
import type { DistanceDefinition, IntervalValue, SetFigures, StopSet } from './stop-set.ts';
import { withSharedError } from './with-shared-error.ts';

export interface CompareInput {
  readonly before: StopSet;
  readonly after: StopSet;
  /** m/s. */
  readonly nominalSpeed: number;
  readonly definition: DistanceDefinition;
  /** For the bootstrap, and for the permutations that are drawn where there are too many to try all. */
  readonly seed: number;
  /**
   * Whether one logger measured both sets by one signal, so that its unknown delay drops out of the difference; true
   * where absent.
   */
  readonly sameLogger?: boolean;
  /** m, a difference that should be seen, for the number of runs; the measured one where absent. */
  readonly wantedDifference?: number;
  /** What else differed between the sets; handed through, because it can't be told from the change. */
  readonly confounders?: readonly string[];
}

/** Two sets of stops set against each other; distances in m, differences after minus before. */
export interface StopSetComparison {
  readonly ok: true;
  readonly definition: DistanceDefinition;
  readonly nominalSpeed: number;
  readonly before: SetFigures;
  readonly after: SetFigures;
  /** Negative is shorter; Welch's interval, widened by what the loggers' delays don't share. */
  readonly difference: IntervalValue;
  /** % of the mean before. */
  readonly differencePercent: IntervalValue;
  /** Null where no set spreads at all. */
  readonly welch: { readonly t: number; readonly degreesOfFreedom: number; readonly p: number } | null;
  readonly permutation: { readonly p: number; readonly arrangements: number; readonly exact: boolean };
  /** By drawing both sets anew from themselves, widened as `difference` is. */
  readonly bootstrap: {
    readonly difference: IntervalValue;
    readonly draws: number;
    /** Whether a set has under ten stops, where such an interval comes out too narrow; Welch's then holds. */
    readonly tooNarrow: boolean;
  };
  /** With run order, warm-up and recorded conditions taken out; null where nothing could be. */
  readonly adjusted: AdjustedDifference | null;
  /** What was not taken out, and why. */
  readonly notAdjusted: readonly NotAdjusted[];
  readonly bestOfEach: {
    readonly difference: number;
    /**
     * What the best of so many runs lies under the mean by luck alone, at each set's own spread; as much as it is expected
     * to lie under one single run.
     */
    readonly expectedGainBefore: number;
    readonly expectedGainAfter: number;
    /** m, where 95 in 100 such gains lie. */
    readonly gainIntervalBefore: { readonly low: number; readonly high: number };
    readonly gainIntervalAfter: { readonly low: number; readonly high: number };
    /** What the best after against the best before says beyond the means, by luck: gain before less gain after. */
    readonly byLuck: number;
  };
  /** Runs in each set that show the difference with 80 % power, four at least; null where more than a million. */
  readonly runsNeeded: { readonly difference: number; readonly runsPerSet: number | null };
  readonly confounders: readonly string[];
}

/**
 * Compares the stops before a change with those after it, honestly: means with Welch's interval, a permutation test that
 * assumes no shape (every arrangement tried where the sets are small), a bootstrap, trend and warm-up within each set, the
 * difference with these and the recorded conditions taken out, what "best of each" gains by luck, and how many runs would
 * show the difference.
 *
 * Equation: difference x̄a − x̄b ± √((t s)² + (1.96 σ)²); by one logger σ = |σa − σb|, which is about nothing, because its
 * delay moves both sets alike; by two loggers σ = √(σa² + σb²); stops too alike to
 * scatter add what their measuring leaves open (`hiddenError`). The chances (Welch, permutation) are those of the scatter
 * alone.
 * Assumes: nothing but the set-up differed; what did is passed in and handed through. Runs are independent.
 * Valid: two stops that count in each set; with three against three no permutation test gets under 0.1.
 *
 * @param input - both sets in run order, nominal speed in m/s, definition of the distance, seed
 * @returns the comparison; or which set has too few stops that count
 * @throws OutOfRangeError where the nominal speed can't be
 * Source: [nist-handbook], [fisher-1935]
 */
export function compareStopSets(input: CompareInput): StopSetComparison | SetTooSmall {
  const { definition, nominalSpeed, confounders = [] } = input;
  const counted = {
    before: countedDistances(input.before, definition, nominalSpeed),
    after: countedDistances(input.after, definition, nominalSpeed),
  };
  const small = setTooSmall([
    ['before', counted.before],
    ['after', counted.after],
  ]);
  if (small !== undefined) return small;
  const before = setFigures(input.before.name, counted.before);
  const after = setFigures(input.after.name, counted.after);
  const test = welch(summarize(after.distances), summarize(before.distances));
  const apart = (input.sameLogger ?? true) ? subtract : Math.hypot;
  const hidden = Math.hypot(hiddenError(after), hiddenError(before));
  const sharedApart = Math.hypot(apart(after.sharedError, before.sharedError), hidden);
  const permuted = permutationTest(after.distances, before.distances, { seed: input.seed });
  return {
    ok: true,
    definition,
    nominalSpeed,
    before,
    after,
    difference: withSharedError({ value: test.difference, low: test.low, high: test.high }, sharedApart),
    differencePercent: percentOf(before, after, test, apart),
    welch: Number.isFinite(test.t) ? { t: test.t, degreesOfFreedom: test.degreesOfFreedom, p: test.p } : null,
    permutation: permutationOf(permuted),
    bootstrap: bootstrapOf(before, after, sharedApart, input.seed),
    ...adjustedBy(counted.before, counted.after, sharedApart),
    bestOfEach: bestOfEach(before, after),
    runsNeeded: runsFor(input.wantedDifference ?? test.difference, before, after),
    confounders,
  };
}

/** What is left in a difference of the errors of its sides. */
type Apart = (after: number, before: number) => number;

/** One delay moves both sides alike. */
function subtract(after: number, before: number): number {
  return Math.abs(after - before);
}

function permutationOf({ p, tried, exact }: PermutationTest): StopSetComparison['permutation'] {
  return { p, arrangements: tried, exact };
}

/** Stops in a set under which a bootstrap interval comes out too narrow. */
const bootstrapHolds = 10;

function bootstrapOf(
  before: SetFigures,
  after: SetFigures,
  sharedApart: number,
  seed: number,
): StopSetComparison['bootstrap'] {
  const draws = 10_000;
  const interval = bootstrapDifference(after.distances, before.distances, { seed, draws });
  const value = after.mean.value - before.mean.value;
  return {
    difference: withSharedError({ value, ...interval }, sharedApart),
    draws,
    tooNarrow: Math.min(after.distances.length, before.distances.length) < bootstrapHolds,
  };
}

function adjustedBy(
  before: CountedDistances,
  after: CountedDistances,
  sharedApart: number,
): Pick<StopSetComparison, 'adjusted' | 'notAdjusted'> {
  const { adjusted, notAdjusted } = adjustedDifference(before, after);
  if (adjusted === null) return { adjusted, notAdjusted };
  return {
    adjusted: { ...adjusted, difference: withSharedError(adjusted.difference, sharedApart) },
    notAdjusted,
  };
}

/** Ratio of the means by the delta method: the mean before is unsure too. */
function percentOf(before: SetFigures, after: SetFigures, test: TTest, apart: Apart): IntervalValue {
  const ratio = after.mean.value / before.mean.value;
  const standardError =
    Math.sqrt(squaredErrorOfMean(after) + ratio * ratio * squaredErrorOfMean(before)) / before.mean.value;
  const value = ratio - 1;
  const interval = tInterval({ value, standardError, degreesOfFreedom: test.degreesOfFreedom }, 0.95);
  const hidden = Math.hypot(hiddenError(after), ratio * hiddenError(before));
  const shared = Math.hypot(apart(after.sharedError, ratio * before.sharedError), hidden) / before.mean.value;
  const { low, high } = withSharedError({ value, ...interval }, shared);
  return { value: 100 * value, low: 100 * low, high: 100 * high };
}

function bestOfEach(before: SetFigures, after: SetFigures): StopSetComparison['bestOfEach'] {
  const gainBefore = gainByLuck(before);
  const gainAfter = gainByLuck(after);
  return {
    difference: after.best - before.best,
    expectedGainBefore: gainBefore.gain,
    expectedGainAfter: gainAfter.gain,
    gainIntervalBefore: { low: gainBefore.low, high: gainBefore.high },
    gainIntervalAfter: { low: gainAfter.low, high: gainAfter.high },
    byLuck: gainBefore.gain - gainAfter.gain,
  };
}

function squaredErrorOfMean({ standardDeviation, distances }: SetFigures): number {
  return standardDeviation ** 2 / distances.length;
}

function gainByLuck({ distances, standardDeviation }: SetFigures): BestOfGain {
  const { gain, low, high } = bestOfGain(distances.length);
  return { gain: gain * standardDeviation, low: low * standardDeviation, high: high * standardDeviation };
}

function runsFor(wanted: number, before: SetFigures, after: SetFigures): StopSetComparison['runsNeeded'] {
  const difference = Math.abs(wanted);
  const spread = Math.sqrt((before.standardDeviation ** 2 + after.standardDeviation ** 2) / 2);
  if (spread === 0) return { difference, runsPerSet: difference > 0 ? fewestRuns : null };
  if (difference === 0) return { difference, runsPerSet: null };
  const { runs } = runsNeeded({ difference, standardDeviation: spread });
  return { difference, runsPerSet: Number.isFinite(runs) ? Math.max(fewestRuns, runs) : null };
}
