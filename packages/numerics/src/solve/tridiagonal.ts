import { OutOfRangeError } from '../refuse/out-of-range-error.ts';

/** n equations, each joining an unknown to its two neighbors. All four arrays have length n. */
export interface TridiagonalSystem {
  /** a_i, factor of x_(i-1); a_0 is not read. Kept. */
  readonly lower: Float64Array;
  /** b_i, factor of x_i. Overwritten. */
  readonly diagonal: Float64Array;
  /** c_i, factor of x_(i+1); c_(n-1) is not read. Kept. */
  readonly upper: Float64Array;
  /** d_i on the way in, x_i on the way out. Overwritten. */
  readonly right: Float64Array;
}

/**
 * Solves a chain of equations in which every unknown meets only its neighbors (Thomas algorithm), in place.
 *
 * Equation: a_i x_(i-1) + b_i x_i + c_i x_(i+1) = d_i
 * Assumes: no pivot becomes zero; sure where |b_i| >= |a_i| + |c_i|, as in heat conduction.
 *
 * Allocates nothing: `right` holds the answer afterwards and `diagonal` is used up.
 *
 * @param system - a, b, c and d, any consistent units; `diagonal` and `right` are overwritten
 * @returns the same `right`, now x, unit of d over unit of b
 * @throws OutOfRangeError where the lengths differ or a pivot is zero or no number
 * Source: [thomas-1949]
 * @example
 * tridiagonal({ lower: Float64Array.of(0, 1), diagonal: Float64Array.of(2, 3), upper: Float64Array.of(1, 0), right: Float64Array.of(4, 7) })[1] // => 2
 */
export function tridiagonal(system: TridiagonalSystem): Float64Array {
  const { lower, diagonal, upper, right } = system;
  const count = right.length;
  if (lower.length !== count || diagonal.length !== count || upper.length !== count) {
    throw new OutOfRangeError(
      'length of a band',
      Math.min(lower.length, diagonal.length, upper.length),
      '',
      count,
      count,
    );
  }
  for (let i = 0; i < count; i += 1) {
    if (i > 0) {
      const factor = lower[i]! / diagonal[i - 1]!;
      diagonal[i] = diagonal[i]! - factor * upper[i - 1]!;
      right[i] = right[i]! - factor * right[i - 1]!;
    }
    if (!(Math.abs(diagonal[i]!) > 0))
      throw new OutOfRangeError('pivot', diagonal[i]!, '', Number.MIN_VALUE, Infinity);
  }
  if (count > 0) right[count - 1] = right[count - 1]! / diagonal[count - 1]!;
  for (let i = count - 2; i >= 0; i -= 1) {
    right[i] = (right[i]! - upper[i]! * right[i + 1]!) / diagonal[i]!;
  }
  return right;
}
