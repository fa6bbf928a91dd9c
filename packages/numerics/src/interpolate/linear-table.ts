import { OutOfRangeError } from '../refuse/out-of-range-error.ts';

/**
 * What a table says between its points: straight lines, and the end values beyond its ends.
 *
 * Equation: y = y_i + (y_(i+1) - y_i) (x - x_i) / (x_(i+1) - x_i)
 * Assumes: xs ascending; the caller has checked that once, not this function at every call. Where two xs are equal
 * (a step), the later y holds at the step.
 * Valid: any x; beyond the ends the end value is held. NaN gives NaN.
 *
 * Allocates nothing.
 *
 * @param xs - x_i, ascending, in the unit of x
 * @param ys - y_i, as many as xs, in the unit of the result
 * @param x - where to look, in the unit of xs
 * @returns y at x, in the unit of ys
 * @throws OutOfRangeError where the table is empty or ys has another length
 * @example
 * linearTable([0, 100, 300], [0.4, 0.5, 0.3], 200) // => 0.4
 */
export function linearTable(xs: ArrayLike<number>, ys: ArrayLike<number>, x: number): number {
  const last = xs.length - 1;
  if (last < 0) throw new OutOfRangeError('points in the table', xs.length, '', 1, Infinity);
  if (ys.length !== xs.length) {
    throw new OutOfRangeError('values in the table', ys.length, '', xs.length, xs.length);
  }
  if (x >= xs[last]!) return ys[last]!;
  if (x < xs[0]!) return ys[0]!;
  const low = pointAtOrBelow(xs, x);
  const share = (x - xs[low]!) / (xs[low + 1]! - xs[low]!);
  return ys[low]! + share * (ys[low + 1]! - ys[low]!);
}

/** Greatest i with xs[i] <= x, for xs[0] <= x < xs[last]; for NaN some i inside the table. */
function pointAtOrBelow(xs: ArrayLike<number>, x: number): number {
  let low = 0;
  let high = xs.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >>> 1;
    if (xs[middle]! <= x) low = middle;
    else high = middle;
  }
  return low;
}
