import { fittedDistance, fittedSpeed, onsetFitter, type OnsetFit, type OnsetShape } from './onset-model.ts';
import type { FittedPart, OnsetStart } from './onset-start.ts';
import type { RestMoment } from './rest-moment.ts';
import type { RoughOnset } from './rough-onset.ts';
import { indexAt, speedAt } from './speed-at.ts';
import type { SpeedRun } from './speed-run.ts';

/** When braking began, with what is known of it. */
export interface OnsetEstimate extends OnsetStart {
  /** s, standard error of `time`. */
  readonly standardError: number;
  /** s, from the onset until nine tenths of the deceleration are reached. */
  readonly nearlyFull: number;
}

/** s; ramps that are tried. A foot and a booster build up in 0.1 to 0.6 s; a soft stop takes longer. Common practice. */
const shortestRamp = 0.05;
const longestRamp = 2;
/**
 * s; a real build-up is no perfect ramp, and a receiver's filter rounds its beginning: by so much the fitted onset may
 * miss the true one however dense the samples. Common practice.
 */
const roundedBy = 0.025;
/** Share of the time between samples by which the onset may miss beyond that: what none of them shows. Common practice. */
const unseen = 0.04;

/**
 * Estimates the onset of deceleration by back-extrapolation: a straight approach and a ramp to steady deceleration are
 * fitted for every start and every ramp of a grid; each fit counts by its likelihood, so that what the samples don't
 * tell widens the standard error instead of hiding in one best fit. The grid is laid around the step: where the
 * deceleration first passes half of what the stop reaches, whatever the car did before.
 *
 * Assumes: errors are normal; where neighbors hang together (a receiver's filter), they count less.
 *
 * @param run - samples of speed
 * @param rough - where the walk back from rest ended
 * @param rest - the end of the stop
 * @param interval - s, usual time between samples
 * @param resolution - m/s, the step that the speed is recorded in
 * @returns the estimate; null where too few samples lie around the onset
 */
export function estimateOnset(
  run: SpeedRun,
  rough: RoughOnset,
  rest: RestMoment,
  interval: number,
  resolution: number,
): OnsetEstimate | null {
  const { time, speed } = run;
  const step = stepTime(run, rough, rest, interval);
  const first = Math.max(0, Math.min(indexAt(run, step - before - interval), rough.index - 1));
  const joins = Math.min(indexAt(run, step + Math.max(after, 2 * interval)), rest.lastMoving);
  if (joins - first < 3) return null;
  const times = time.subarray(first, joins + 1);
  const speeds = speed.subarray(first, joins + 1);
  const floor = Math.max(0.02, resolution / Math.sqrt(12));
  const fit = onsetFitter(times, speeds, floor);
  const coarse = gridOf(
    Math.max(step - earliest - interval, time[first]!),
    step + interval / 2,
    shortestRamp,
    longestRamp,
    24,
    7,
  );
  const judged = judgedFits(coarse.map(fit), times, speeds, floor);
  const finer = finerGrid(judged);
  const rounded = Math.hypot(roundedBy, unseen * interval);
  return described(judgedFits(finer.map(fit), times, speeds, floor), times, joins, rounded);
}

/** s that are fitted before and after the step, and by how much the onset may lie before it. */
const before = 2;
const after = 0.8;
const earliest = 1.5;

/** s where the deceleration over 0.3 s (a sample where that is longer) first passes half of its greatest in the stop. */
function stepTime(run: SpeedRun, rough: RoughOnset, rest: RestMoment, interval: number): number {
  const window = Math.max(0.3, interval);
  const steps: number[] = [];
  for (let i = rough.index; i <= rest.lastMoving; i += 1) {
    const ahead = Math.min(run.time[i]! + window, rest.time);
    const lost = run.speed[i]! - (ahead === rest.time ? 0 : speedAt(run, ahead));
    steps.push(ahead - run.time[i]! > window / 2 ? lost / (ahead - run.time[i]!) : 0);
  }
  const half = Math.max(...steps) / 2;
  const index = rough.index + steps.findIndex((step) => step >= half);
  return run.time[index]! + window / 2;
}

/** How a deceleration may grow: steeply first, evenly, softly first. */
const powers = [0.5, 1, 1.5] as const;
/** A priori weights of these; a straight ramp is likeliest, a soft beginning rare. Common practice. */
const likelihoods = { 0.5: 1, 1: 2, 1.5: 0.25 } as const;

/** Starts evenly, ramps evenly in proportion, for each way to grow. */
function gridOf(
  from: number,
  to: number,
  shortest: number,
  longest: number,
  starts: number,
  ramps: number,
): OnsetShape[] {
  const ratio = (longest / shortest) ** (1 / (ramps - 1));
  return powers.flatMap((power) =>
    Array.from({ length: starts * ramps }, (_, i) => ({
      start: from + ((to - from) * (i % starts)) / (starts - 1),
      ramp: shortest * ratio ** Math.floor(i / starts),
      power,
    })),
  );
}

/** A grid over what the coarse one left likely: four standard deviations and a step of the coarse grid either way. */
function finerGrid({ fits, mean }: JudgedFits): OnsetShape[] {
  const step = Math.abs(fits[1]!.shape.start - fits[0]!.shape.start);
  const start = mean((fit) => fit.shape.start);
  const reach = 4 * Math.sqrt(mean((fit) => (fit.shape.start - start) ** 2)) + step;
  const logRamp = mean((fit) => Math.log(fit.shape.ramp));
  const factor = Math.exp(4 * Math.sqrt(mean((fit) => (Math.log(fit.shape.ramp) - logRamp) ** 2)) + 0.3);
  const ramp = Math.exp(logRamp);
  const [shortest, longest] = [Math.max(shortestRamp, ramp / factor), Math.min(longestRamp, ramp * factor)];
  return gridOf(start - reach, start + reach, shortest, longest, 24, 7);
}

/** Fits with the weight that each has by its likelihood. */
interface JudgedFits {
  readonly fits: readonly OnsetFit[];
  readonly noise: number;
  readonly correlation: number;
  readonly mean: (of: (fit: OnsetFit) => number) => number;
}

function judgedFits(
  fits: readonly OnsetFit[],
  times: Float64Array,
  speeds: Float64Array,
  floor: number,
): JudgedFits {
  const best = fits.reduce((found, fit) => (fit.misfit < found.misfit ? fit : found));
  const freedom = Math.max(0, times.length - 5);
  const prior = 4;
  const noise = Math.sqrt((best.misfit + prior * (2 * floor) ** 2) / (freedom + prior));
  const correlation = errorCorrelation(best, times, speeds);
  const scale = 2 * noise * noise * correlation;
  const weights = fits.map((fit) =>
    fit.deceleration > 0 ? likelihoods[fit.shape.power] * Math.exp((best.misfit - fit.misfit) / scale) : 0,
  );
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = (of: (fit: OnsetFit) => number): number =>
    fits.reduce((sum, fit, i) => sum + weights[i]! * of(fit), 0) / total;
  return { fits, noise, correlation, mean };
}

function described(
  { noise, correlation, mean }: JudgedFits,
  times: Float64Array,
  joins: number,
  rounded: number,
): OnsetEstimate {
  const end = times[times.length - 1]!;
  const from = (start: number | null): FittedPart => {
    const distanceOf = (fit: OnsetFit): number => fittedDistance(fit, start ?? fit.shape.start, end);
    const distance = mean(distanceOf);
    const entrySpeed = mean((fit) => fittedSpeed(fit, start ?? fit.shape.start));
    const level = (end - times[0]!) * noise * Math.sqrt(correlation / times.length);
    const shape = start === null ? entrySpeed * rounded : 0;
    const variance = mean((fit) => (distanceOf(fit) - distance) ** 2) + level * level + shape * shape;
    return { entrySpeed, distance, standardError: Math.sqrt(variance) };
  };
  const time = mean((fit) => fit.shape.start);
  const spread = mean((fit) => (fit.shape.start - time) ** 2);
  return {
    time,
    standardError: Math.hypot(Math.sqrt(spread), rounded),
    nearlyFull: mean(({ shape }) => shape.ramp * 0.9 ** (1 / shape.power)),
    joins,
    noise,
    correlation,
    from,
  };
}

/** s; over longer times errors of a speed no longer hang together, and what is left over is the stop itself. */
const longestTogether = 0.5;

/**
 * By how much the errors of neighbors hang together: 1 + 2 Σ ρk, up to the first lag whose correlation is lost; at most
 * what half a second of samples makes.
 */
function errorCorrelation(fit: OnsetFit, times: Float64Array, speeds: Float64Array): number {
  const count = times.length;
  const residuals = speeds.map((speed, i) => speed - fittedSpeed(fit, times[i]!));
  const squares = residuals.reduce((sum, value) => sum + value * value, 0);
  if (count < 8 || squares === 0) return 1;
  const lags = Math.min(count / 3, (longestTogether * (count - 1)) / (times[count - 1]! - times[0]!));
  let factor = 1;
  for (let lag = 1; lag <= lags; lag += 1) {
    let products = 0;
    for (let i = lag; i < count; i += 1) products += residuals[i]! * residuals[i - lag]!;
    if (products < 0.05 * squares) break;
    factor += (2 * products) / squares;
  }
  return Math.min(factor, Math.max(1, lags));
}
