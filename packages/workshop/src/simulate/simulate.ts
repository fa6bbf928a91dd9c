import { fullStopTrace, fullStopWorkspace, meanFullStop, fullStop } from '@standstill/braking';
import type { FullStopSummary } from '@standstill/braking';
import { requireRange } from '@standstill/numerics';
import type { DrawSampling } from '../draws/draw-sampling.ts';
import { intervalOf } from '../draws/interval-of.ts';
import type { Job } from '../job/job.ts';
import { CannotStopError } from '../predict/cannot-stop-error.ts';
import { dangerWords } from '../predict/danger-words.ts';
import { predict } from '../predict/predict.ts';
import type { PredictOptions } from '../predict/predict.ts';
import type { Prediction } from '../results/prediction.ts';
import type { SetUpSimulation, SimulationReport } from '../results/simulation-report.ts';
import type { Warning } from '../results/warning.ts';
import { settle } from '../settle/settle.ts';
import { percent } from '../words/percent.ts';
import { drawnStops } from './drawn-stops.ts';
import type { DrawnFigures } from './drawn-stops.ts';
import { fullInput } from './full-input.ts';
import type { SimulatedFoot } from './full-input.ts';
import { simulationSentence } from './simulation-sentence.ts';
import { simulationTraceOf } from './simulation-trace-of.ts';

/** All SI; what is left out is as the job says. */
export interface SimulateOptions extends PredictOptions, SimulatedFoot {
  readonly sampling?: DrawSampling;
  /** Whether each set-up's trace is in the report. */
  readonly trace?: boolean;
}

/** Stops whose mean a central distance is, where a control's chance is in it. */
const stopsOfMean = 24;
/** Draws behind the intervals where none are asked for: a simulated stop costs sixty quick ones. */
const usualDraws = 100;

/** Part of a sought deceleration, 1, that counts as reached. */
const nearEnough = 0.95;
/** Draws behind the warnings and the quick stop beside it: one of those has a whole row of stops in it. */
const warningDraws = 40;

/**
 * Answers how the set-ups of a job stop with all four wheels turning: slip, pitch, pressures and a control that cycles.
 *
 * Assumes: as `fullStop`; a central distance is the mean of stops whose control begins at other moments. Dangers and other
 * warnings are those of `predict`.
 *
 * @param job - the job
 * @param options - as `predict`, 100 draws where absent; what the foot does instead; whether traces are wanted
 * @returns the report, SI with the unit in each key
 * @throws OutOfRangeError where an override is outside what the formulas are valid for
 * @throws SetUpRangeError where a set-up is
 * @throws CannotStopError where a set-up does not come to rest
 */
export function simulate(job: Job, options: SimulateOptions = {}): SimulationReport {
  const { draws = usualDraws, seed = 1, sampling } = options;
  if (options.deceleration !== undefined)
    requireRange('deceleration wanted', options.deceleration, 'm/s²', 0.1, 20);
  const prediction = predict(job, { ...options, draws: Math.min(draws, warningDraws) });
  const overrides = { speed: options.speed, pedalForce: options.pedalForce };
  const setUpIds = prediction.setUps.map(({ id }) => id);
  const drawn = drawnStops({ job, setUpIds, overrides, foot: options, draws, seed, sampling });
  const setUps = setUpIds.map((_, index) => simulated({ job, options, prediction, drawn, index }));
  const notes = [...missedNotes(setUps, options.deceleration), ...simulationNotes(job, setUpIds)];
  const warnings = [...prediction.warnings, ...notes];
  return {
    kind: 'simulation-report',
    version: 1,
    sentence: [
      ...dangerWords({ warnings, setUps: prediction.setUps }),
      ...setUps.slice(0, 1).map(({ sentence }) => sentence),
    ].join(' '),
    job: job.title,
    speed_m_s: prediction.speed_m_s,
    pedalForce_N: prediction.pedalForce_N,
    soughtDeceleration_m_s2: options.deceleration ?? null,
    lockedWheels: options.lockedWheels === true,
    surface: prediction.surface,
    draws,
    seed,
    sampling: sampling ?? 'latin-hypercube',
    setUps,
    differences: setUps.slice(1).map((changed, index) => differenceOf(setUps, drawn, changed, index + 1)),
    warnings,
    assumed: prediction.assumed,
  };
}

interface SimulatedInput {
  readonly job: Job;
  readonly options: SimulateOptions;
  readonly prediction: Prediction;
  readonly drawn: readonly DrawnFigures[];
  readonly index: number;
}

function simulated({ job, options, prediction, drawn, index }: SimulatedInput): SetUpSimulation {
  const predicted = prediction.setUps[index];
  const draws = drawn[index];
  if (predicted === undefined || draws === undefined) throw new TypeError('a set-up was not drawn');
  const { id, title } = predicted;
  const settled = settle(job, id, undefined, { speed: options.speed, pedalForce: options.pedalForce });
  const input = fullInput(settled, options);
  const march = fullStopWorkspace();
  const mean = meanFullStop({ ...input, stops: stopsOfMean }, march);
  const stop = fullStop(input, march);
  if (!stop.cameToRest) throw new CannotStopError(id, title);
  const figures = {
    id,
    title,
    ...estimatesOf(stop, mean, draws),
    ...countsOf(stop),
    chance_m: mean.standardError,
    quickDistance_m:
      options.deceleration === undefined && options.lockedWheels !== true ? predicted.distance_m.value : null,
    energies_J: { ...stop.energies },
    trace: options.trace === true ? simulationTraceOf(fullStopTrace(input).trace) : null,
  };
  const words = { simulated: figures, speed: settled.speed, units: options.units ?? 'us' };
  return { ...figures, sentence: simulationSentence(words) };
}

function estimatesOf(stop: FullStopSummary, mean: ReturnType<typeof meanFullStop>, draws: DrawnFigures) {
  const meanDeceleration = (stop.meanDeceleration * stop.distance) / mean.distance;
  return {
    distance_m: intervalOf(mean.distance, draws.distance),
    time_s: intervalOf(mean.time, draws.time),
    meanDeceleration_m_s2: intervalOf(meanDeceleration, draws.meanDeceleration),
    meanFullyDevelopedDeceleration_m_s2: intervalOf(
      stop.meanFullyDevelopedDeceleration,
      draws.meanFullyDevelopedDeceleration,
    ),
    efficiency: intervalOf(mean.efficiency, draws.efficiency),
    frontPeakTemperature_degC: intervalOf(stop.front.peakInterface, draws.frontPeak),
    rearPeakTemperature_degC: intervalOf(stop.rear.peakInterface, draws.rearPeak),
  };
}

function countsOf(stop: FullStopSummary) {
  return {
    peakDeceleration_m_s2: stop.peakDeceleration,
    limitedBy: stop.limitedBy,
    frontCycles: stop.frontCycles,
    rearCycles: stop.rearCycles,
    frontSlideShare: stop.frontSlideShare,
    rearSlideShare: stop.rearSlideShare,
  };
}

function differenceOf(
  setUps: readonly SetUpSimulation[],
  drawn: readonly DrawnFigures[],
  changed: SetUpSimulation,
  index: number,
): SimulationReport['differences'][number] {
  const reference = setUps[0];
  const before = drawn[0]?.distance;
  const after = drawn[index]?.distance;
  if (reference === undefined || before === undefined || after === undefined)
    throw new TypeError('a set-up was not drawn');
  const differences = after.map((distance, row) => distance - (before[row] ?? Number.NaN));
  const value = changed.distance_m.value - reference.distance_m.value;
  return { setUp: changed.id, reference: reference.id, distance_m: intervalOf(value, differences) };
}

/** Where the foot sought a deceleration that the car did not come near. */
function missedNotes(setUps: readonly SetUpSimulation[], sought: number | undefined): Warning[] {
  if (sought === undefined) return [];
  return setUps
    .filter(({ meanFullyDevelopedDeceleration_m_s2: reached }) => reached.value < nearEnough * sought)
    .map(({ id, title, meanFullyDevelopedDeceleration_m_s2: reached }) => {
      const message = `${title}: the foot did not reach the deceleration that it sought; the fully developed part is ${percent(reached.value / sought)} of it. It had no more force, or the tires no more grip.`;
      return { code: 'deceleration-not-reached', severity: 'caution', about: id, message };
    });
}

function simulationNotes(job: Job, setUpIds: readonly string[]): Warning[] {
  const used = setUpIds.flatMap((id) => {
    const { antilock } = settle(job, id).setUp;
    return antilock.kind === 'threshold' ? [antilock.efficiency] : [];
  });
  if (used.length === 0) return [];
  const least = percent(Math.min(...used));
  const message = `The ABS simulated here is a generic one, tuned for no car, that knows the car's speed exactly on an even road: what it uses of the grip comes out, where the quick stop takes ${least}. The car's own control may stop it shorter or longer, and no figure here says that it still works as approved.`;
  return [{ code: 'generic-antilock', severity: 'caution', message }];
}
