import { fitOnset, fittedDistance, fittedSpeed, type OnsetFit } from './onset-model.ts';
import type { FittedPart, OnsetStart } from './onset-start.ts';
import type { RestMoment } from './rest-moment.ts';
import type { RoughOnset } from './rough-onset.ts';
import { indexAt, speedAt } from './speed-at.ts';
import type { SpeedRun } from './speed-run.ts';

/** When braking began, with what is known of it. */
export interface OnsetEstimate extends OnsetStart {
  /** s, from the onset until the deceleration is full. */
  readonly ramp: number;
}

/** s; ramps that are tried. A foot and a booster build up in 0.1 to 0.6 s; a soft stop takes longer. Common practice. */
const ramps = [0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.55, 0.75, 1, 1.4, 2];
const starts = 60;

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
  const fits = gridOf(Math.max(step - earliest - interval, time[first]!), step + interval / 2).map((shape) =>
    fitOnset(times, speeds, shape, floor),
  );
  return weighed(fits, times, speeds, floor, joins);
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

function gridOf(from: number, to: number): { start: number; ramp: number }[] {
  return ramps.flatMap((ramp) =>
    Array.from({ length: starts + 1 }, (_, i) => ({ start: from + ((to - from) * i) / starts, ramp })),
  );
}

function weighed(
  fits: readonly OnsetFit[],
  times: Float64Array,
  speeds: Float64Array,
  floor: number,
  joins: number,
): OnsetEstimate {
  const best = fits.reduce((found, fit) => (fit.misfit < found.misfit ? fit : found));
  const freedom = Math.max(0, times.length - 5);
  const prior = 4;
  const noise = Math.sqrt((best.misfit + prior * (2 * floor) ** 2) / (freedom + prior));
  const correlation = errorCorrelation(best, times, speeds);
  const scale = 2 * noise * noise * correlation;
  const weights = fits.map((fit) => (fit.deceleration > 0 ? Math.exp((best.misfit - fit.misfit) / scale) : 0));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = (of: (fit: OnsetFit) => number): number =>
    fits.reduce((sum, fit, i) => sum + weights[i]! * of(fit), 0) / total;
  const end = times[times.length - 1]!;
  const from = (start: number | null): FittedPart => {
    const distanceOf = (fit: OnsetFit): number => fittedDistance(fit, start ?? fit.shape.start, end);
    const distance = mean(distanceOf);
    const level = (end - times[0]!) * noise * Math.sqrt(correlation / times.length);
    const variance = mean((fit) => (distanceOf(fit) - distance) ** 2) + level * level;
    const entrySpeed = mean((fit) => fittedSpeed(fit, start ?? fit.shape.start));
    return { entrySpeed, distance, standardError: Math.sqrt(variance) };
  };
  const time = mean((fit) => fit.shape.start);
  return { time, ramp: mean((fit) => fit.shape.ramp), joins, noise, correlation, from };
}

/** (1 + ρ)/(1 - ρ) of neighboring residuals, between 1 and 20. */
function errorCorrelation(fit: OnsetFit, times: Float64Array, speeds: Float64Array): number {
  let products = 0;
  let squares = 0;
  let last = 0;
  for (let i = 0; i < times.length; i += 1) {
    const residual = speeds[i]! - fittedSpeed(fit, times[i]!);
    if (i > 0) products += residual * last;
    squares += residual * residual;
    last = residual;
  }
  if (times.length < 8 || squares === 0) return 1;
  const rho = Math.min(0.9, Math.max(0, products / squares));
  return (1 + rho) / (1 - rho);
}
