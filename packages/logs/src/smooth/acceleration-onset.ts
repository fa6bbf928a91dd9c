import { clockGrain } from '../stops/clock-grain.ts';
import type { RealSamples } from './real-samples.ts';

/** When a deceleration began, as an accelerometer shows it. */
export interface AccelerationOnset {
  /** s. */
  readonly time: number;
  /** s, standard error of `time`. */
  readonly standardError: number;
}

/** s; how long before half of the deceleration is reached the onset may lie, and how much is fitted before that. */
const earliest = 0.9;
const before = 0.5;
/** How the deceleration grows with the time since the onset: from a step-like to a soft beginning. */
const powers = [0.5, 1, 1.5, 2.2];
const starts = 48;
/** s, so that one jolt is not taken for braking. */
const smoothedOver = 0.05;
/** s; an onset is no sharper than the motion of a foot and the play of brakes. Common practice. */
const sharpest = 0.012;

/**
 * Finds the onset of a deceleration in the readings of an accelerometer: a steady reading and then a growth by a power
 * of the time are fitted up to where four fifths of the deceleration are reached, for every start and power of a grid;
 * each counts by its likelihood.
 *
 * Equation: z = c - k (t - t0)^p after t0, c before; p from 0.5 to 2.2
 * Assumes: errors normal and new with every sample; what a fit leaves over counts as error.
 *
 * @param samples - m/s², forward positive
 * @param search - s, between which half of the deceleration is reached; m/s², what is reached; s, usual step of the samples
 * @returns the onset; null where too few samples lie around it
 */
export function accelerationOnset(
  samples: RealSamples,
  search: {
    readonly from: number;
    readonly to: number;
    readonly deceleration: number;
    readonly interval: number;
  },
): AccelerationOnset | null {
  const { time, values } = samples;
  const from = lowerBound(time, search.from);
  const to = lowerBound(time, search.to);
  const level = meanOf(values, from, lowerBound(time, search.from + before));
  const reach = Math.min(2, Math.round(smoothedOver / search.interval / 2));
  const half = firstBelow(values, from, to, reach, level - search.deceleration / 2);
  if (half < 0) return null;
  const first = lowerBound(time, time[half]! - earliest - before - clockGrain);
  const until = lowerBound(time, time[half]! + 1 - clockGrain);
  const ahead = firstBelow(values, half, until, reach, level - 0.8 * search.deceleration);
  const end = Math.max(ahead, half) + 1;
  if (end - first < 8) return null;
  return judged(samples, first, end, time[half]!);
}

function judged({ time, values }: RealSamples, first: number, end: number, half: number): AccelerationOnset {
  const fits: { start: number; misfit: number }[] = [];
  const step = earliest / (starts - 1);
  for (const power of powers)
    for (let i = 0; i < starts; i += 1) {
      const start = half - earliest + i * step;
      fits.push({ start, misfit: misfitOf(time, values, first, end, start, power) });
    }
  const best = fits.reduce((least, { misfit }) => Math.min(least, misfit), Infinity);
  const variance = Math.max(best / Math.max(1, end - first - 4), 1e-4);
  let [weights, mean, square] = [0, 0, 0];
  for (const { start, misfit } of fits) {
    const weight = Math.exp((best - misfit) / (2 * variance));
    weights += weight;
    mean += weight * (start - half);
    square += weight * (start - half) ** 2;
  }
  mean /= weights;
  const spread = Math.max(0, square / weights - mean * mean);
  return { time: half + mean, standardError: Math.sqrt(spread + (step * step) / 12 + sharpest ** 2) };
}

/** Sum of squares that a constant and a growth from the start leave over, by linear least squares. */
function misfitOf(
  time: Float64Array,
  values: Float64Array,
  first: number,
  end: number,
  start: number,
  power: number,
): number {
  const n = end - first;
  let [y, yy, x, xx, xy] = [0, 0, 0, 0, 0];
  for (let i = first; i < end; i += 1) {
    const value = values[i]!;
    y += value;
    yy += value * value;
    const since = time[i]! - start;
    if (since <= 0) continue;
    const grown = power === 1 ? since : since ** power;
    x += grown;
    xx += grown * grown;
    xy += grown * value;
  }
  const spread = xx - (x * x) / n;
  const common = xy - (x * y) / n;
  const flat = yy - (y * y) / n;
  return common >= 0 || spread <= 0 ? flat : Math.max(0, flat - (common * common) / spread);
}

/** Row whose mean with so many rows either side is the first under a level; -1 where none is. */
function firstBelow(values: Float64Array, from: number, to: number, reach: number, level: number): number {
  for (let i = Math.max(reach, from); i < to && i + reach < values.length; i += 1)
    if (meanOf(values, i - reach, i + reach + 1) < level) return i;
  return -1;
}

function meanOf(values: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i += 1) sum += values[i]!;
  return to > from ? sum / (to - from) : 0;
}

function lowerBound(time: Float64Array, moment: number): number {
  let low = 0;
  let high = time.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (time[middle]! < moment) low = middle + 1;
    else high = middle;
  }
  return low;
}
