import { drawSheet } from '../draws/draw-sheet.ts';
import { knownsOf } from '../draws/knowns-of.ts';
import { measureNext } from '../influence/measure-next.ts';
import { sensitivity } from '../influence/sensitivity.ts';
import type { Sensitivity } from '../influence/sensitivity.ts';
import { sensitivityResult } from '../influence/sensitivity-result.ts';
import type { Job, JobSetUp } from '../job/job.ts';
import { changedParts } from '../predict/changed-parts.ts';
import { predict } from '../predict/predict.ts';
import type { PredictOptions } from '../predict/predict.ts';
import type { LimitsDifference, LimitsReport, MeasureNext, SetUpLimits } from '../results/limits-report.ts';
import type { Prediction } from '../results/prediction.ts';
import { settle } from '../settle/settle.ts';
import type { Settled } from '../settle/settle.ts';
import { budgetIntervals } from './budget-intervals.ts';
import { differenceSentence } from './difference-sentence.ts';
import { lastOverFirst, limitOf } from './limit-of.ts';
import { limitDetails, limitSentence } from './limit-sentence.ts';
import { limitsSentence } from './limits-sentence.ts';
import { partIntervals } from './part-intervals.ts';

/** Draws behind the intervals of the budgets: each takes 64 stops a set-up. */
const budgetDraws = 100;

/**
 * Answers what holds the set-ups of a job back, where the feet go, which part buys which feet, and what to measure next.
 *
 * Assumes: as `predict`. Budgets and splits get their intervals from the first 100 draws at most; what to measure next is
 * for the distance of one stop.
 *
 * @param job - the job
 * @param options - as `predict`
 * @returns the report, SI with the unit in each key
 * @throws OutOfRangeError where an override is outside what the formulas are valid for
 * @throws SetUpRangeError where a set-up is
 * @throws CannotStopError where a set-up does not come to rest
 */
export function limits(job: Job, options: PredictOptions = {}): LimitsReport {
  return limitsFrom(job, options, predict(job, options));
}

/**
 * The limits that go with a prediction: the same as `limits`, whoever drew the prediction's draws.
 *
 * @param job - the job
 * @param options - as `limits`
 * @param prediction - what `predict` answers to the same options
 * @returns the report
 */
export function limitsFrom(job: Job, options: PredictOptions, prediction: Prediction): LimitsReport {
  const { seed = 1, units = 'us' } = options;
  const overrides = { speed: options.speed, pedalForce: options.pedalForce };
  const setUpIds = prediction.setUps.map(({ id }) => id);
  const found = sensitivity({ job, setUpIds, overrides, seed });
  const intervals = [...prediction.setUps, ...prediction.differences].map(({ distance_m }) => distance_m);
  const advice = measureNext({ job, found, intervals, seed, units });
  const view: View = { job, options, prediction, found, advice, drawn: drawnSetUps(job, setUpIds, options) };
  const setUps = prediction.setUps.map((_, index) => setUpLimits(view, index));
  const differences = prediction.differences.map((_, index) => differenceLimits(view, index));
  const { speed_m_s, pedalForce_N, surface, draws, sampling, warnings, assumed } = prediction;
  const sentence = limitsSentence({ prediction, setUps });
  const head = { kind: 'limits-report', version: 1, sentence, job: prediction.job } as const;
  return {
    ...head,
    speed_m_s,
    pedalForce_N,
    surface,
    draws,
    seed,
    sampling,
    setUps,
    differences,
    warnings,
    assumed,
  };
}

interface View {
  readonly job: Job;
  readonly options: PredictOptions;
  readonly prediction: Prediction;
  readonly found: Sensitivity;
  /** One list for each distance, then for each difference. */
  readonly advice: readonly (readonly MeasureNext[])[];
  /** Every set-up in the same draws. */
  readonly drawn: readonly (readonly Settled[])[];
}

/** Every set-up settled in the same draws, so that what they share is the same. */
function drawnSetUps(
  job: Job,
  setUpIds: readonly string[],
  options: PredictOptions,
): readonly (readonly Settled[])[] {
  const { draws = 400, seed = 1, sampling, speed, pedalForce } = options;
  const knowns = knownsOf(job, setUpIds);
  const sheet = drawSheet({ knowns, draws: Math.min(draws, budgetDraws), seed, sampling });
  return setUpIds.map((id) => sheet.map((draw) => settle(job, id, draw, { speed, pedalForce })));
}

function setUpLimits({ job, options, prediction, found, advice, drawn }: View, index: number): SetUpLimits {
  const setUp = prediction.setUps[index]!;
  const central = prediction.budgets[index]!;
  const { budget, tiresLimitShare } = budgetIntervals(central, drawn[index]!);
  const { speed, pedalForce } = options;
  const settled = settle(job, setUp.id, undefined, { speed, pedalForce });
  const limit = limitOf({ setUp, budget: central, settled });
  const ratio = lastOverFirst(setUp, job.conditions.repeatedStops.count);
  const { units = 'us' } = options;
  const asked = { speed: prediction.speed_m_s, pedalForce: prediction.pedalForce_N, units };
  const told = { setUp, limit, lastOverFirst: ratio, tiresLimitShare, ...asked };
  return {
    id: setUp.id,
    title: setUp.title,
    sentence: limitSentence(told),
    details: limitDetails(told),
    limit,
    tiresLimitShare,
    distance_m: setUp.distance_m,
    pedalForceAtLimit_N: setUp.pedalForceAtLimit_N,
    pedalForceThere_N: setUp.pedalForceThere_N,
    pedalTravelShare: setUp.pedalTravelShare,
    firstToLock: setUp.balance.firstToLock,
    lastOverFirst: ratio,
    budget,
    measureNext: [...advice[index]!],
    sensitivity: sensitivityResult(job, found, index),
  };
}

function differenceLimits(
  { job, options, prediction, found, advice, drawn }: View,
  index: number,
): LimitsDifference {
  const { id, against, distance_m, byPart, pairing } = prediction.differences[index]!;
  const output = prediction.setUps.length + index;
  const slots = changedParts(setUpOf(job, against), setUpOf(job, id));
  const split = partIntervals({ slots, central: byPart, reference: drawn[0]!, changed: drawn[index + 1]! });
  const titles = [id, against].map((wanted) => setUpOf(job, wanted).title);
  return {
    id,
    against,
    distance_m,
    pairing,
    ...split,
    sentence: differenceSentence({
      titles,
      distance: distance_m,
      byPart: split.byPart,
      units: options.units ?? 'us',
    }),
    measureNext: [...advice[output]!],
    sensitivity: sensitivityResult(job, found, output),
  };
}

function setUpOf(job: Job, id: string): JobSetUp {
  const found = job.setUps.find((setUp) => setUp.id === id);
  if (found === undefined) throw new RangeError(`the job has no set-up "${id}"`);
  return found;
}
