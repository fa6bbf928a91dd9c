/** One way in which braking may have begun: when, and how long the deceleration took to build up. */
export interface OnsetShape {
  /** s, t0, when the deceleration begins. */
  readonly start: number;
  /** s, tr, until it is full. */
  readonly ramp: number;
}

/** Straight approach, ramp, steady deceleration: v = c0 + c1 τ - a r(τ), τ = t - t0. */
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
 * Fits a straight approach and a ramp to steady deceleration to samples around the onset, for given t0 and tr, by
 * linear least squares.
 *
 * Equation: v = c0 + c1 τ - a r(τ); r = 0 before t0, τ²/(2 tr) on the ramp, τ - tr/2 after it
 *
 * @param time - s
 * @param speed - m/s
 * @param shape - t0 and tr
 * @param noise - m/s, standard deviation of a sample, to weigh the prior on the approach
 * @returns the fit
 */
export function fitOnset(
  time: ArrayLike<number>,
  speed: ArrayLike<number>,
  shape: OnsetShape,
  noise: number,
): OnsetFit {
  const sums = {
    n: time.length,
    t: 0,
    r: 0,
    tt: (noise / approachSpread) ** 2,
    tr: 0,
    rr: 1e-9,
    v: 0,
    vt: 0,
    vr: 0,
    vv: 0,
  };
  for (let i = 0; i < time.length; i += 1) {
    const tau = time[i]! - shape.start;
    const lost = lostPart(tau, shape.ramp);
    const v = speed[i]!;
    sums.t += tau;
    sums.r += lost;
    sums.tt += tau * tau;
    sums.tr += tau * lost;
    sums.rr += lost * lost;
    sums.v += v;
    sums.vt += v * tau;
    sums.vr += v * lost;
    sums.vv += v * v;
  }
  const [c0, c1, minusA] = solved(sums);
  const misfit = Math.max(0, sums.vv - c0 * sums.v - c1 * sums.vt - minusA * sums.vr);
  return { shape, entrySpeed: c0, approach: c1, deceleration: -minusA, misfit };
}

/** m/s of a fit at a time in s. */
export function fittedSpeed({ shape, entrySpeed, approach, deceleration }: OnsetFit, time: number): number {
  const tau = time - shape.start;
  return entrySpeed + approach * tau - deceleration * lostPart(tau, shape.ramp);
}

/** m that a fit covers between two times in s. */
export function fittedDistance(fit: OnsetFit, from: number, to: number): number {
  return coveredUntil(fit, to) - coveredUntil(fit, from);
}

function coveredUntil({ shape, entrySpeed, approach, deceleration }: OnsetFit, time: number): number {
  const tau = time - shape.start;
  return entrySpeed * tau + (approach * tau * tau) / 2 - deceleration * lostDistance(tau, shape.ramp);
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
function lostPart(tau: number, ramp: number): number {
  if (tau <= 0) return 0;
  return tau < ramp ? (tau * tau) / (2 * ramp) : tau - ramp / 2;
}

/** s², integral of r from 0: distance lost for 1 m/s² of full deceleration. */
function lostDistance(tau: number, ramp: number): number {
  if (tau <= 0) return 0;
  if (tau < ramp) return tau ** 3 / (6 * ramp);
  const after = tau - ramp;
  return (ramp * ramp) / 6 + (after * after) / 2 + (after * ramp) / 2;
}
