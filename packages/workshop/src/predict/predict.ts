import { requireRange } from '@standstill/numerics';
import type { UnitSystem } from '@standstill/units';
import { drawRange } from '../draws/draw-range.ts';
import type { DrawRequest } from '../draws/draw-request.ts';
import type { DrawSampling } from '../draws/draw-sampling.ts';
import type { DrawnRange } from '../draws/drawn-range.ts';
import type { Job } from '../job/job.ts';
import { chosenSetUps } from '../job/chosen-set-ups.ts';
import { printFillings } from '../job/print-fillings.ts';
import type { Prediction } from '../results/prediction.ts';
import type { Warning } from '../results/warning.ts';
import { settle } from '../settle/settle.ts';
import type { Overrides } from '../settle/settle.ts';
import { caseOf } from './case-of.ts';
import type { Case } from './case-of.ts';
import { changedParts, distanceByPart } from './changed-parts.ts';
import { predictionSentence } from './prediction-sentence.ts';
import { sampledFrom } from './sample-set-ups.ts';
import { setUpDifference } from './set-up-difference.ts';
import { stopBudgetResult } from './stop-budget-result.ts';
import { verdict } from './verdict.ts';
import type { VerdictInput } from './verdict.ts';
import { antilockChange } from './warnings/antilock-change.ts';
import { inOrder } from './warnings/in-order.ts';
import { isOnWater } from './is-on-water.ts';
import { jobNotes } from './warnings/model-notes.ts';

/** All SI; what is left out is as the job says. */
export interface PredictOptions {
  /** m/s. */
  readonly speed?: number;
  /** N at the pedal pad. */
  readonly pedalForce?: number;
  /** Draws behind the intervals; 400 where absent. */
  readonly draws?: number;
  /** Any whole number; 1 where absent. */
  readonly seed?: number;
  /** How the draws are spread; `latin-hypercube` where absent. */
  readonly sampling?: DrawSampling;
  /** Ids; all where absent. The first is what the others are set against. */
  readonly setUps?: readonly string[];
  /** Units of the sentences; `us` where absent. */
  readonly units?: UnitSystem;
}

/**
 * Answers what the set-ups of a job would do, what each changes against the first, and how sure that is.
 *
 * Assumes: central values come from the central inputs, intervals hold 95 % of the draws; what set-ups share is drawn
 * once for all of them. The row of repeated stops is driven for the first 200 draws.
 *
 * @param job - the job
 * @param options - speed, m/s; pedal force, N; draws, seed; set-ups; units of the sentences
 * @returns the prediction, SI with the unit in each key (°C for temperatures)
 * @throws OutOfRangeError where an override is outside what the formulas are valid for
 * @throws SetUpRangeError where a set-up is
 * @throws CannotStopError where a set-up does not come to rest
 */
export function predict(job: Job, options: PredictOptions = {}): Prediction {
  const request = predictionRequest(job, options);
  return predictionFrom(job, options, drawRange(job, request, 0, request.draws));
}

/**
 * The draws that a prediction stands on, for those who have them drawn elsewhere.
 *
 * @param job - the job
 * @param options - as `predict`
 * @returns what to draw
 * @throws OutOfRangeError where an override is outside what the formulas are valid for
 */
export function predictionRequest(job: Job, options: PredictOptions = {}): DrawRequest {
  const { draws = 400, seed = 1, sampling } = options;
  checkOverrides(options);
  const setUpIds = chosenSetUps(job, options.setUps).map(({ id }) => id);
  return { question: 'prediction', setUpIds, overrides: overridesOf(options), draws, seed, sampling };
}

/**
 * The prediction that follows from draws: the same as `predict`, whoever drew them.
 *
 * @param job - the job
 * @param options - as `predict`
 * @param drawn - all draws of `predictionRequest`
 * @returns the prediction, SI with the unit in each key (°C for temperatures)
 * @throws SetUpRangeError where a set-up is outside what the formulas are valid for
 * @throws CannotStopError where a set-up does not come to rest
 */
export function predictionFrom(job: Job, options: PredictOptions, drawn: DrawnRange): Prediction {
  const { draws = 400, seed = 1, units = 'us' } = options;
  const overrides = overridesOf(options);
  const setUps = chosenSetUps(job, options.setUps);
  const { bySetUp, troubles } = sampledFrom(drawn);
  const cases = setUps.map((setUp, index) => {
    const drawsOfIt = bySetUp[index];
    const troublesOfIt = troubles[index];
    if (drawsOfIt === undefined || troublesOfIt === undefined)
      throw new TypeError(`set-up ${setUp.id} was not sampled`);
    const settled = settle(job, setUp.id, undefined, overrides);
    return caseOf({ job, setUp, settled, draws: drawsOfIt, troubles: troublesOfIt, units });
  });
  const [first, ...others] = cases;
  if (first === undefined) throw new RangeError('the job has no set-up');
  const surface = job.conditions.surface;
  const wet = isOnWater(job);
  const changes = others.map((other) => changeOf(first, other, wet, units));
  const warnings = inOrder(
    [
      ...cases.flatMap((one) => one.warnings),
      ...others.flatMap((other) => antilockWarning(first, other)),
      ...jobNotes({ job, settled: first.settled, stopTime: longestStop(cases), units }),
    ],
    cases.length,
  );
  const { speed } = first.settled;
  const pedalForce = first.settled.foot.force;
  return {
    kind: 'prediction',
    version: 1,
    sentence: predictionSentence({
      setUps: cases.map(({ prediction }) => prediction),
      changes,
      warnings,
      speed,
      pedalForce,
      wet,
      units,
    }),
    job: job.title,
    speed_m_s: speed,
    pedalForce_N: pedalForce,
    surface,
    draws,
    seed,
    sampling: options.sampling ?? 'latin-hypercube',
    setUps: cases.map(({ prediction }) => prediction),
    differences: changes.map((change) => ({ ...change.difference, verdict: verdict(change) })),
    budgets: cases.map(({ setUp, settled }) => stopBudgetResult(setUp, settled, units)),
    warnings,
    assumed: printFillings(job.fillings, units),
  };
}

function overridesOf({ speed, pedalForce }: PredictOptions): Overrides {
  return { speed, pedalForce };
}

/** What is asked of all set-ups is refused before any of them. */
function checkOverrides({ speed, pedalForce }: PredictOptions): void {
  if (speed !== undefined) requireRange('speed', speed, 'm/s', 0.1, 150);
  if (pedalForce !== undefined) requireRange('pedal force', pedalForce, 'N', 0, 5000);
}

/** s, of the set-ups whose pedal stays off the floor. */
function longestStop(cases: readonly Case[]): number {
  const sound = cases.filter(({ prediction }) => !prediction.pedalBottoms);
  return Math.max(0, ...sound.map(({ prediction }) => prediction.time_s.value));
}

function changeOf(reference: Case, changed: Case, wet: boolean, units: UnitSystem): VerdictInput {
  const slots = changedParts(reference.setUp, changed.setUp);
  const byPart = distanceByPart(slots, reference.settled, changed.settled);
  return {
    reference: reference.prediction,
    changed: changed.prediction,
    difference: setUpDifference(changed.sampling, reference.sampling, byPart, units),
    sameTires: !slots.some((slot) => slot === 'frontTire' || slot === 'rearTire'),
    dangers: changed.warnings.filter(({ severity }) => severity === 'danger'),
    referenceInDanger: reference.warnings.some(({ severity }) => severity === 'danger'),
    wet,
    startTemperature: reference.settled.startTemperature,
    speed: reference.settled.speed,
    pedalForce: reference.settled.foot.force,
    units,
  };
}

function antilockWarning(reference: Case, changed: Case): Warning[] {
  const { id, title } = changed.setUp;
  const warning = antilockChange(id, title, reference.settled, changed.settled);
  return warning === null ? [] : [warning];
}
