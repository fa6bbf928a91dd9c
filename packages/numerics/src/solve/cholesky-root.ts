import { OutOfRangeError } from '../refuse/out-of-range-error.ts';
import { requireRange } from '../refuse/require-range.ts';

/** What of a row may be lost in rounding before it counts as a mix of the rows before it, 1. */
const leastShare = 1e-13;

/**
 * The lower triangle whose product with its own transpose is a symmetric matrix, as `choleskySolve` takes it.
 *
 * Equation: A = L Lᵀ
 * Assumes: the matrix is symmetric; only its lower triangle is read.
 * Valid: 1 to 256 rows; a matrix that is not positive definite is refused.
 *
 * @param matrix - A, row by row, n times n numbers of any unit; not changed
 * @param size - n, rows and columns, 1
 * @returns L, row by row with zeros above the diagonal, root of the unit of the matrix
 * @throws OutOfRangeError where the size does not fit, or a row is a mix of those before it
 * Source: [golub-van-loan]
 * @example
 * choleskyRoot([4, 2, 2, 5], 2) // => [2, 0, 1, 2]
 */
export function choleskyRoot(matrix: ArrayLike<number>, size: number): Float64Array {
  requireRange('size of the matrix', size, '', 1, 256);
  requireRange('numbers in the matrix', matrix.length, '', size * size, size * size);
  const root = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1)
    for (let j = 0; j <= i; j += 1) {
      let sum = matrix[i * size + j]!;
      for (let k = 0; k < j; k += 1) sum -= root[i * size + k]! * root[j * size + k]!;
      if (i !== j) root[i * size + j] = sum / root[j * size + j]!;
      else {
        const least = leastShare * Math.abs(matrix[i * size + i]!);
        if (!(sum > least))
          throw new OutOfRangeError(`what only column ${i + 1} holds`, sum, '', least, Infinity);
        root[i * size + i] = Math.sqrt(sum);
      }
    }
  return root;
}
