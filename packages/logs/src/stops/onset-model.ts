/** One way in which braking may have begun: when, and how long the deceleration took to build up. */
export interface OnsetShape {
  /** s, t0, when the deceleration begins. */
  readonly start: number;
  /** s, tr, until it is full. */
  readonly ramp: number;
  /** p, how it grows: with the time to this power. 1 is a straight ramp, less begins steeply, more begins softly. */
  readonly power: 0.5 | 1 | 1.5;
}

/** Straight approach, build-up, steady deceleration: v = c0 + c1 τ - a r(τ), τ = t - t0. */
export interface OnsetFit {
  readonly shape: OnsetShape;
  /** m/s at t0. */
  readonly entrySpeed: number;
  /** m/s², c1, how the speed changed before; a prior holds it near zero. */
  readonly approach: number;
  /** m/s², a. */
  readonly deceleration: number;
  /** m²/s², sum of squared residuals with the prior's part. */
  readonly misfit: number;
}

/** m/s², how much the speed may have been changing before the brake was touched: standard deviation of the prior. */
const approachSpread = 0.5;

/**
 * Prepares samples around an onset for fits of a straight approach and a build-up to steady deceleration, by linear
 * least squares for given t0, tr and p. Sums over the straight parts are made once, so that a fit only walks over its
 * build-up.
 *
 * Equation: v = c0 + c1 τ - a r(τ); r = 0 before t0, τ (τ/tr)^p/(p + 1) in the build-up, τ - tr p/(p + 1) after it
 *
 * @param time - s, ascending
 * @param speed - m/s
 * @param noise - m/s, standard deviation of a sample, to weigh the prior on the approach
 * @returns takes t0, tr and p, gives the fit
 */
export function onsetFitter(
  time: Float64Array,
  speed: Float64Array,
  noise: number,
): (shape: OnsetShape) => OnsetFit {
  const sums = suffixSums(time, speed);
  const { t, v, tt, vt, vv, zero, level } = sums;
  const count = time.length;
  const prior = (noise / approachSpread) ** 2;
  return (shape) => {
    const start = shape.start - zero;
    const lost = lostSums(sums, start, shape);
    const all = {
      n: count,
      t: t[0]! - count * start,
      tt: tt[0]! - 2 * start * t[0]! + count * start * start + prior,
      v: v[0]!,
      vt: vt[0]! - start * v[0]!,
      ...lost,
    };
    const [c0, c1, minusA] = solved(all);
    const misfit = Math.max(0, vv - c0 * all.v - c1 * all.vt - minusA * all.vr);
    return { shape, entrySpeed: c0 + level, approach: c1, deceleration: -minusA, misfit };
  };
}

/** Sums from each sample to the last, times from the first sample's, speeds from their mean. */
interface SuffixSums {
  /** s, time of the first sample. */
  readonly zero: number;
  /** m/s, mean speed. */
  readonly level: number;
  readonly times: Float64Array;
  readonly speeds: Float64Array;
  readonly t: Float64Array;
  readonly tt: Float64Array;
  readonly v: Float64Array;
  readonly vt: Float64Array;
  readonly vv: number;
}

function suffixSums(time: Float64Array, speed: Float64Array): SuffixSums {
  const count = time.length;
  const zero = time[0]!;
  const level = speed.reduce((sum, value) => sum + value, 0) / count;
  const times = time.map((value) => value - zero);
  const speeds = speed.map((value) => value - level);
  const [t, tt, v, vt] = [0, 0, 0, 0].map(() => new Float64Array(count + 1)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  let vv = 0;
  for (let i = count - 1; i >= 0; i -= 1) {
    t[i] = t[i + 1]! + times[i]!;
    tt[i] = tt[i + 1]! + times[i]! * times[i]!;
    v[i] = v[i + 1]! + speeds[i]!;
    vt[i] = vt[i + 1]! + speeds[i]! * times[i]!;
    vv += speeds[i]! * speeds[i]!;
  }
  return { zero, level, times, speeds, t, tt, v, vt, vv };
}

/** Sums with r(τ): sample by sample on the ramp, at once after it, where r is a straight line. */
function lostSums(
  { times, speeds, t, tt, v, vt }: SuffixSums,
  start: number,
  { ramp, power }: OnsetShape,
): { r: number; tr: number; rr: number; vr: number } {
  const count = times.length;
  let i = firstAfter(times, start);
  let r = 0;
  let tr = 0;
  let rr = 1e-9;
  let vr = 0;
  for (; i < count && times[i]! - start < ramp; i += 1) {
    const tau = times[i]! - start;
    const lost = lostInBuildUp(tau, ramp, power);
    r += lost;
    tr += tau * lost;
    rr += lost * lost;
    vr += speeds[i]! * lost;
  }
  const [n, shift] = [count - i, start + (ramp * power) / (power + 1)];
  r += t[i]! - n * shift;
  tr += tt[i]! - (start + shift) * t[i]! + n * start * shift;
  rr += tt[i]! - 2 * shift * t[i]! + n * shift * shift;
  vr += vt[i]! - shift * v[i]!;
  return { r, tr, rr, vr };
}

/** Index of the first time after a moment. */
function firstAfter(times: Float64Array, moment: number): number {
  let low = 0;
  let high = times.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (times[middle]! <= moment) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** m/s of a fit at a time in s. */
export function fittedSpeed({ shape, entrySpeed, approach, deceleration }: OnsetFit, time: number): number {
  const tau = time - shape.start;
  return entrySpeed + approach * tau - deceleration * lostPart(tau, shape);
}

/** m that a fit covers between two times in s. */
export function fittedDistance(fit: OnsetFit, from: number, to: number): number {
  return coveredUntil(fit, to) - coveredUntil(fit, from);
}

function coveredUntil({ shape, entrySpeed, approach, deceleration }: OnsetFit, time: number): number {
  const tau = time - shape.start;
  return entrySpeed * tau + (approach * tau * tau) / 2 - deceleration * lostDistance(tau, shape);
}

interface NormalSums {
  readonly n: number;
  readonly t: number;
  readonly r: number;
  readonly tt: number;
  readonly tr: number;
  readonly rr: number;
  readonly v: number;
  readonly vt: number;
  readonly vr: number;
}

/** Cramer's rule on the symmetric three by three system of the fit. */
function solved({ n, t, r, tt, tr, rr, v, vt, vr }: NormalSums): readonly [number, number, number] {
  const a = tt * rr - tr * tr;
  const b = tr * r - t * rr;
  const c = t * tr - tt * r;
  const determinant = n * a + t * b + r * c;
  if (!(Math.abs(determinant) > 1e-12)) return [v / n, 0, 0];
  const d = n * rr - r * r;
  const e = t * r - n * tr;
  const f = n * tt - t * t;
  return [
    (v * a + vt * b + vr * c) / determinant,
    (v * b + vt * d + vr * e) / determinant,
    (v * c + vt * e + vr * f) / determinant,
  ];
}

/** s, r(τ): speed lost for 1 m/s² of full deceleration. */
function lostPart(tau: number, { ramp, power }: OnsetShape): number {
  if (tau <= 0) return 0;
  return tau < ramp ? lostInBuildUp(tau, ramp, power) : tau - (ramp * power) / (power + 1);
}

/** s, r(τ) while the deceleration grows; powers by hand, as this is the innermost of the search. */
function lostInBuildUp(tau: number, ramp: number, power: OnsetShape['power']): number {
  const share = tau / ramp;
  if (power === 1) return (tau * share) / 2;
  const root = Math.sqrt(share);
  return (tau * (power === 1.5 ? share * root : root)) / (power + 1);
}

/** s², integral of r from 0: distance lost for 1 m/s² of full deceleration. */
function lostDistance(tau: number, { ramp, power }: OnsetShape): number {
  if (tau <= 0) return 0;
  if (tau < ramp) return (lostInBuildUp(tau, ramp, power) * tau) / (power + 2);
  const after = tau - ramp;
  return (ramp * ramp) / ((power + 1) * (power + 2)) + (after * after) / 2 + (after * ramp) / (power + 1);
}
