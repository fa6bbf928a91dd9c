import type { IntervalValue } from './stop-set.ts';

/**
 * Widens a 95 % interval by an error that does not average out.
 *
 * Equation: half-widths √(h² + (z σ)²), z = 1.96
 * Assumes: the shared error is about normal and independent of the scatter.
 *
 * @param interval - value with low and high, any unit
 * @param sharedError - σ, standard error in that unit
 * @returns the wider interval; the same where nothing is shared
 */
export function withSharedError({ value, low, high }: IntervalValue, sharedError: number): IntervalValue {
  const more = normalReach * sharedError;
  return { value, low: value - Math.hypot(value - low, more), high: value + Math.hypot(high - value, more) };
}

/** 97.5 % quantile of the normal distribution. */
const normalReach = 1.959964;
