import { compareStopSets } from '@standstill/logs';
import type { CompareInput, StopSetComparison } from '@standstill/logs';
import type { UnitSystem } from '@standstill/units';
import type { Estimate } from '../results/estimate.ts';
import type { Comparison, ComparisonRefusal } from '../results/log-report.ts';
import { speaker } from '../words/speaker.ts';
import { adjustedResult } from './adjusted-result.ts';
import { comparisonFigures } from './comparison-figures.ts';
import { comparisonSentence } from './comparison-sentence.ts';
import { comparisonWarnings } from './comparison-warnings.ts';
import { adviceFor } from './control/advice-for.ts';
import { controlOf } from './control/control-of.ts';
import { controlResult } from './control/control-result.ts';
import { allDifferences } from './differences/all-differences.ts';
import type { Difference } from './differences/difference.ts';
import { notWrittenDown } from './differences/not-written-down.ts';
import { explain } from './explain.ts';
import { judgedWarnings } from './judged-warnings.ts';
import { leadingDifference } from './leading-difference.ts';
import { nominalSpeedOf } from './nominal-speed-of.ts';
import { refuseComparison } from './refuse-comparison.ts';
import { repeatedLog } from './repeated-log.ts';
import { sameLogger } from './same-logger.ts';
import { setSummary } from './set-summary.ts';
import type { RunSet } from './sets/run-set.ts';
import { headingAxis, stopSetOf } from './stop-set-of.ts';

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
 * Sets the stops before a change against those after it, honest about spread, luck and what else was different. Where the
 * old set-up was driven once more, or another car beside this one, what moved without the change is taken out.
 *
 * @param input - the sets of reports in run order, with the runs of the job; definition of the distance; nominal speed,
 *   m/s; seed; what the model expects of the change, m
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
  const differences = allDifferences(input);
  const axis = headingAxis(before);
  const asked: CompareInput = {
    before: stopSetOf(before, nominal.speed, axis),
    after: stopSetOf(after, nominal.speed, axis),
    nominalSpeed: nominal.speed,
    definition,
    sameLogger: sameLogger(before.reports, after.reports) && differences.every(({ key }) => key !== 'logger'),
    seed,
  };
  const compared = compareStopSets(asked);
  if (!compared.ok) return refuseComparison('set-too-small', input, units, { tooSmall: compared });
  return comparisonOf({ input, asked, compared, differences, isGuessed: nominal.guessed });
}

interface ComparedSides {
  readonly input: CompareRunsInput;
  readonly asked: CompareInput;
  readonly compared: StopSetComparison;
  readonly differences: readonly Difference[];
  /** True where nobody stated the nominal speed. */
  readonly isGuessed: boolean;
}

function comparisonOf({ input, asked, compared, differences, isGuessed }: ComparedSides): Comparison {
  const { units = 'us' } = input;
  const say = speaker(units);
  const { nominalSpeed, definition } = compared;
  const isOneLogger = asked.sameLogger ?? true;
  const control = controlOf({
    sets: input,
    differences,
    nominalSpeed,
    definition,
    sameLogger: isOneLogger,
    say,
  });
  const leading = leadingDifference(compared, control.controlled);
  const expectation =
    input.expectation === undefined ? null : explain(leading, input.expectation, input.seed, units);
  const { left } = control;
  const isRepeated = input.repeat !== undefined;
  return {
    kind: 'comparison',
    version: 1,
    sentence: comparisonSentence(compared, { differences: left, expectation, leading }, units),
    definition,
    nominalSpeed_m_s: nominalSpeed,
    before: setSummary(compared.before, input.before),
    after: setSummary(compared.after, input.after),
    ...comparisonFigures(compared),
    adjusted: compared.adjusted === null ? null : adjustedResult(compared.adjusted, say),
    control: control.controlled === null ? null : controlResult(control.controlled, say),
    confounded: left.length > 0,
    advice: [...adviceFor(left, isRepeated)],
    sameLogger: isOneLogger,
    confounders: left.map(({ text }) => text),
    expectation,
    warnings: [
      ...(input.warnings ?? []),
      ...notWrittenDown(input.before, input.after),
      ...control.warnings,
      ...judgedWarnings(compared, asked, say),
      ...comparisonWarnings({
        compared,
        guessed: isGuessed,
        reports: [...input.before.reports, ...input.after.reports],
        units,
      }),
    ],
  };
}
