import { normalQuantile } from '../distributions/normal-quantile.ts';
import { requireRange } from '../refuse/require-range.ts';
import { expectedBestOf } from './expected-best-of.ts';
import type { Interval } from './interval.ts';

/** What the best of several tries lies from their mean by luck, in standard deviations of a single try. */
export interface BestOfGain extends Interval {
  /** Mean of it, and of the best of so many over one single try: a single try is expected at the mean. */
  readonly gain: number;
}

/**
 * How far the best of n tries may lie from the mean where nothing is at work but luck.
 *
 * Equation: E(best of n) as `expectedBestOf`; P(best under z) = Φ(z)^n, so ends z = Φ⁻¹(((1±c)/2)^(1/n))
 * Assumes: tries independent and normal.
 * Valid: n from 1 to 1e9.
 *
 * @param count - n, 1, tries
 * @param confidence - c, 1, above 0 and under 1
 * @returns expected gain and the interval in which one best of n lies, 1 (standard deviations of a single try)
 * @throws OutOfRangeError where n is below 1 or above 1e9, or c is outside
 * @example
 * bestOfGain(5).gain // => 1.16296
 */
export function bestOfGain(count: number, confidence = 0.95): BestOfGain {
  requireRange('confidence', confidence, '', 1e-9, 1 - 1e-12);
  const end = (probability: number): number => normalQuantile(probability ** (1 / count));
  return {
    gain: expectedBestOf(count),
    low: end((1 - confidence) / 2),
    high: end((1 + confidence) / 2),
  };
}
