import { OutOfRangeError } from '../refuse/out-of-range-error.ts';
import type { Interval } from './interval.ts';
import { mean } from './mean.ts';
import { tInterval } from './t-interval.ts';

/** A straight line through points, with how sure it is. */
export interface LinearFit {
  /** Unit of y over unit of x. */
  readonly slope: number;
  /** Unit of y, at x = 0. */
  readonly intercept: number;
  readonly slopeStandardError: number;
  readonly interceptStandardError: number;
  readonly slopeInterval: Interval;
  readonly interceptInterval: Interval;
  /** s of the points about the line, unit of y. */
  readonly residualStandardDeviation: number;
  /** n - 2, 1. */
  readonly degreesOfFreedom: number;
  /** R², 1; NaN where y does not vary. */
  readonly rSquared: number;
}

/**
 * The straight line with the least squared distances in y, and the intervals of its slope and intercept.
 *
 * Equation: b = Σ(x-x̄)(y-ȳ) / Σ(x-x̄)², a = ȳ - b x̄, s² = Σ(y-a-bx)² / (n-2), s_b = s / √Σ(x-x̄)²,
 * s_a = s √(1/n + x̄²/Σ(x-x̄)²)
 * Assumes: x exact; errors of y independent, about normal, of one size.
 *
 * @param xs - x, any unit; at least three, not all alike
 * @param ys - y, as many, any unit
 * @param confidence - c of the intervals, 1, above 0 and under 1
 * @returns the line, units of y and of y over x
 * @throws OutOfRangeError where there are fewer than three points, the counts differ, or all x are alike
 * Source: [r-datasets]
 * @example
 * linearFit([0, 1, 2, 3], [1, 3, 5, 7.4]).slope // => 2.12
 */
export function linearFit(xs: ArrayLike<number>, ys: ArrayLike<number>, confidence = 0.95): LinearFit {
  const count = xs.length;
  if (count < 3) throw new OutOfRangeError('number of points', count, '', 3, Infinity);
  if (ys.length !== count) throw new OutOfRangeError('number of y values', ys.length, '', count, count);
  const center = mean(xs);
  const { xx, xy, yy } = centeredSums(xs, ys);
  if (!(xx > 0)) throw new OutOfRangeError('spread of x', xx, '', Number.MIN_VALUE, Infinity);
  const slope = xy / xx;
  const intercept = mean(ys) - slope * center;
  const degreesOfFreedom = count - 2;
  const residual = squaredResiduals(xs, ys, slope, intercept);
  const residualStandardDeviation = Math.sqrt(residual / degreesOfFreedom);
  const slopeStandardError = residualStandardDeviation / Math.sqrt(xx);
  const interceptStandardError = residualStandardDeviation * Math.sqrt(1 / count + center ** 2 / xx);
  const interval = (value: number, standardError: number): Interval =>
    tInterval({ value, standardError, degreesOfFreedom }, confidence);
  return {
    slope,
    intercept,
    slopeStandardError,
    interceptStandardError,
    slopeInterval: interval(slope, slopeStandardError),
    interceptInterval: interval(intercept, interceptStandardError),
    residualStandardDeviation,
    degreesOfFreedom,
    rSquared: 1 - residual / yy,
  };
}

function centeredSums(xs: ArrayLike<number>, ys: ArrayLike<number>): { xx: number; xy: number; yy: number } {
  const xCenter = mean(xs);
  const yCenter = mean(ys);
  let xx = 0;
  let xy = 0;
  let yy = 0;
  for (let i = 0; i < xs.length; i += 1) {
    xx += (xs[i]! - xCenter) ** 2;
    xy += (xs[i]! - xCenter) * (ys[i]! - yCenter);
    yy += (ys[i]! - yCenter) ** 2;
  }
  return { xx, xy, yy };
}

function squaredResiduals(
  xs: ArrayLike<number>,
  ys: ArrayLike<number>,
  slope: number,
  intercept: number,
): number {
  let sum = 0;
  for (let i = 0; i < xs.length; i += 1) sum += (ys[i]! - intercept - slope * xs[i]!) ** 2;
  return sum;
}
