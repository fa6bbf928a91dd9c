import { chiSquaredQuantile } from '../distributions/chi-squared-quantile.ts';
import { requireRange } from '../refuse/require-range.ts';
import type { Interval } from './interval.ts';

/** A standard deviation with how much it rests on. */
export interface Spread {
  /** s, any unit. */
  readonly standardDeviation: number;
  /** ν, 1: values less the means that were taken from them. */
  readonly degreesOfFreedom: number;
}

/**
 * Where the standard deviation of the population lies that a set of values comes from: wide where the values are few.
 *
 * Equation: s √(ν / χ²_((1+c)/2, ν)) to s √(ν / χ²_((1-c)/2, ν))
 * Assumes: values independent and normal; other shapes make it too narrow, and more values don't mend that.
 *
 * @param spread - s, any unit, and its degrees of freedom
 * @param confidence - c, 1, above 0 and under 1
 * @returns interval, unit of s
 * @throws OutOfRangeError where ν is not above 0, s is below 0, or c is outside
 * Source: [nist-handbook]
 * @example
 * spreadInterval({ standardDeviation: 1, degreesOfFreedom: 3 }).high // => 3.728547
 */
export function spreadInterval({ standardDeviation, degreesOfFreedom }: Spread, confidence = 0.95): Interval {
  requireRange('standard deviation', standardDeviation, '', 0, Number.MAX_VALUE);
  requireRange('confidence', confidence, '', 1e-9, 1 - 1e-12);
  const end = (probability: number): number =>
    standardDeviation * Math.sqrt(degreesOfFreedom / chiSquaredQuantile(probability, degreesOfFreedom));
  return { low: end((1 + confidence) / 2), high: end((1 - confidence) / 2) };
}
