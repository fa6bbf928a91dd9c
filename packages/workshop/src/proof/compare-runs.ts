import { compareStopSets } from '@standstill/logs';
import type { SetFigures, StopSet, StopSetComparison } from '@standstill/logs';
import type { UnitSystem } from '@standstill/units';
import type { Estimate } from '../results/estimate.ts';
import type { Comparison, ComparisonRefusal } from '../results/log-report.ts';
import { comparisonSentence } from './comparison-sentence.ts';
import { comparisonWarnings } from './comparison-warnings.ts';
import { explain } from './explain.ts';
import { foundStopOf } from './found-stop-of.ts';
import { nominalSpeedOf } from './nominal-speed-of.ts';
import { recordingConfounders } from './recording-confounders.ts';
import { refuseComparison } from './refuse-comparison.ts';
import { repeatedLog } from './repeated-log.ts';
import { sameLogger } from './same-logger.ts';
import type { RunSet } from './sets/run-set.ts';

export interface CompareRunsInput {
  readonly before: RunSet;
  readonly after: RunSet;
  /** The old set-up once more, after the new one: what moved meanwhile is no part of the change. */
  readonly repeat?: RunSet;
  /** Another car that was left alone, driven beside the changed one before and after. */
  readonly reference?: { readonly before: RunSet; readonly after: RunSet };
  /** `application` where absent. */
  readonly definition?: 'application' | 'gate';
  /** m/s; that of the reports where absent, else a round speed near that of the stops. */
  readonly nominalSpeed?: number;
  /** For permutations and draws; any whole number. */
  readonly seed: number;
  /** What the model expects of the change, m, after minus before. */
  readonly expectation?: ModelExpectation;
  /** Known differences between the sets besides the set-up. */
  readonly confounders?: readonly string[];
  /** What a reader must know first, such as that a log belongs to another set-up. */
  readonly warnings?: readonly string[];
  readonly units?: UnitSystem;
}

/** What the model expects of a change. */
export interface ModelExpectation {
  readonly setUp: string;
  /** m, after minus before. */
  readonly difference: Estimate;
  /** How many values the prediction assumed; taken for some where absent. */
  readonly assumed?: number;
}

/**
 * Sets the stops before a change against those after it, honest about spread, luck and what else was different.
 *
 * @param input - two sets of reports in run order; definition of the distance; nominal speed, m/s; seed; what the
 *   model expects of the change, m
 * @returns the comparison with distances in m, after minus before; or one sentence that says what is missing
 */
export function compareRuns(input: CompareRunsInput): Comparison | ComparisonRefusal {
  const { before, after, definition = 'application', seed, units = 'us' } = input;
  const reports = [...before.reports, ...after.reports];
  const nominal = nominalSpeedOf({ reports, stated: input.nominalSpeed, units });
  if (!nominal.ok) return refuseComparison(nominal.code, input, units);
  const repeated = repeatedLog(input);
  if (repeated !== null) return refuseComparison('same-log', input, units, { repeated });
  const gateMoved = reports.some(
    ({ nominalSpeed_m_s: speed }) => speed === null || Math.abs(speed - nominal.speed) > 1e-6,
  );
  if (definition === 'gate' && gateMoved) return refuseComparison('no-gate-distance', input, units);
  const compared = compareStopSets({
    before: setOf(before, nominal.speed),
    after: setOf(after, nominal.speed),
    nominalSpeed: nominal.speed,
    definition,
    sameLogger: sameLogger(before.reports, after.reports),
    seed,
  });
  if (!compared.ok) return refuseComparison('set-too-small', input, units, { tooSmall: compared });
  return comparisonOf(compared, input, { guessed: nominal.guessed, units });
}

interface Presentation {
  /** True where nobody stated the nominal speed. */
  readonly guessed: boolean;
  readonly units: UnitSystem;
}

function comparisonOf(compared: StopSetComparison, input: CompareRunsInput, look: Presentation): Comparison {
  const { before, after, welch, permutation, bestOfEach, runsNeeded } = compared;
  const confounders = [...(input.confounders ?? []), ...recordingConfounders(input.before, input.after)];
  const { units } = look;
  const expectation =
    input.expectation === undefined ? null : explain(compared, input.expectation, input.seed, units);
  return {
    kind: 'comparison',
    version: 1,
    sentence: comparisonSentence(compared, { confounders, expectation }, units),
    definition: compared.definition,
    nominalSpeed_m_s: compared.nominalSpeed,
    before: summaryOf(before),
    after: summaryOf(after),
    difference_m: { ...compared.difference },
    differencePercent: { ...compared.differencePercent },
    bootstrap_m: null,
    adjusted: null,
    control: null,
    confounded: confounders.length > 0,
    advice: [],
    sameLogger: sameLogger(input.before.reports, input.after.reports),
    welch: welch === null ? null : { ...welch },
    permutation: { ...permutation },
    bestOfEach: {
      difference_m: bestOfEach.difference,
      expectedGainBefore_m: bestOfEach.expectedGainBefore,
      expectedGainAfter_m: bestOfEach.expectedGainAfter,
    },
    runsNeeded: { difference_m: runsNeeded.difference, runsPerSet: runsNeeded.runsPerSet },
    confounders,
    expectation,
    warnings: [
      ...(input.warnings ?? []),
      ...comparisonWarnings({
        compared,
        guessed: look.guessed,
        reports: [...input.before.reports, ...input.after.reports],
        units,
      }),
    ],
  };
}

/** A correction to another nominal speed is made anew from the distance as driven. */
function setOf({ name, reports }: RunSet, nominalSpeed: number): StopSet {
  const stops = reports.flatMap(({ stops: found, nominalSpeed_m_s: own }) => {
    const kept = own !== null && Math.abs(own - nominalSpeed) <= 1e-6;
    return found.map((stop) => ({ ...foundStopOf(stop), ...(kept ? {} : { correctedDistance: null }) }));
  });
  return { name, stops };
}

function summaryOf(set: SetFigures): Comparison['before'] {
  return {
    name: set.name,
    count: set.distances.length,
    mean_m: { ...set.mean },
    sharedError_m: set.sharedError,
    standardDeviation_m: set.standardDeviation,
    best_m: set.best,
    worst_m: set.worst,
    distances_m: [...set.distances],
    trend_m_per_run: set.trend === null ? null : { ...set.trend },
    warmUp_m: null,
    leftOut: [],
    judged: [],
  };
}
