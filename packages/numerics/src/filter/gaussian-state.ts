import { OutOfRangeError } from '../refuse/out-of-range-error.ts';

/** What is believed of n unknowns: their mean and how they vary together. */
export interface GaussianState {
  /** x, n values of any units. */
  readonly mean: Float64Array;
  /** P, n × n row by row, symmetric. */
  readonly covariance: Float64Array;
}

/**
 * Room for a belief about n unknowns, all zero and exactly known.
 *
 * @param size - n, 1
 * @returns the state, to be filled in place
 * @throws OutOfRangeError where there is not at least one unknown
 */
export function gaussianState(size: number): GaussianState {
  if (!Number.isInteger(size) || size < 1) throw new OutOfRangeError('number of unknowns', size, '', 1, 100);
  return { mean: new Float64Array(size), covariance: new Float64Array(size * size) };
}
