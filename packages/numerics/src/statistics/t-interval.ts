import { tQuantile } from '../distributions/t-quantile.ts';
import { requireRange } from '../refuse/require-range.ts';
import type { Interval } from './interval.ts';

/** An estimate with how sure it is. */
export interface Estimate {
  /** Any unit. */
  readonly value: number;
  /** Unit of the value. */
  readonly standardError: number;
  /** ν, 1. */
  readonly degreesOfFreedom: number;
}

/**
 * The interval of an estimate whose standard error comes from few values.
 *
 * Equation: x ± t_(1-(1-c)/2, ν) s_x
 *
 * @param estimate - value, standard error, degrees of freedom; any unit
 * @param confidence - c, 1, above 0 and under 1
 * @returns interval, unit of the value
 * @throws OutOfRangeError where c is outside, or ν is not above 0
 * @example
 * tInterval({ value: 10, standardError: 1, degreesOfFreedom: 9 }, 0.95).low // => 7.73784
 */
export function tInterval(estimate: Estimate, confidence: number): Interval {
  requireRange('confidence', confidence, '', 1e-9, 1 - 1e-12);
  const half = tQuantile((1 + confidence) / 2, estimate.degreesOfFreedom) * estimate.standardError;
  return { low: estimate.value - half, high: estimate.value + half };
}
