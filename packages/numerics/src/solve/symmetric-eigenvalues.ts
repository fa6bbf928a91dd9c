import { requireRange } from '../refuse/require-range.ts';

const mostSweeps = 60;

/**
 * The eigenvalues of a small symmetric matrix.
 *
 * Equation: Jacobi's rotations, row by row, until what stands off the diagonal is nothing beside it.
 * Assumes: the matrix is symmetric; only its upper triangle is read.
 * Valid: 1 to 64 rows of finite numbers.
 *
 * @param matrix - row by row, n times n numbers of any unit; not changed
 * @param size - n, rows and columns, 1
 * @returns the n eigenvalues, ascending, unit of the matrix
 * @throws OutOfRangeError where the size is outside or does not fit the matrix
 * Source: [golub-van-loan]
 * @example
 * symmetricEigenvalues([2, 1, 1, 2], 2) // => [1, 3]
 */
export function symmetricEigenvalues(matrix: ArrayLike<number>, size: number): Float64Array {
  requireRange('size of the matrix', size, '', 1, 64);
  requireRange('numbers in the matrix', matrix.length, '', size * size, size * size);
  const turned = Float64Array.from(matrix);
  for (let i = 0; i < size; i += 1)
    for (let j = 0; j < i; j += 1) turned[i * size + j] = turned[j * size + i]!;
  for (let sweep = 0; sweep < mostSweeps && offDiagonal(turned, size) > 0; sweep += 1)
    for (let p = 0; p < size; p += 1) for (let q = p + 1; q < size; q += 1) rotate(turned, size, p, q);
  return Float64Array.from({ length: size }, (_, i) => turned[i * size + i]!).sort();
}

/** Sum of squares off the diagonal; 0 once it is lost in the rounding of the diagonal. */
function offDiagonal(matrix: Float64Array, size: number): number {
  let off = 0;
  let on = 0;
  for (let i = 0; i < size; i += 1) {
    on += matrix[i * size + i]! ** 2;
    for (let j = i + 1; j < size; j += 1) off += matrix[i * size + j]! ** 2;
  }
  return off <= on * 1e-34 ? 0 : off;
}

/** Turns rows and columns p and q so that the number where they meet is zero. */
function rotate(matrix: Float64Array, size: number, p: number, q: number): void {
  const meeting = matrix[p * size + q]!;
  if (meeting === 0) return;
  const ratio = (matrix[q * size + q]! - matrix[p * size + p]!) / (2 * meeting);
  const tangent = (ratio >= 0 ? 1 : -1) / (Math.abs(ratio) + Math.hypot(ratio, 1));
  const cosine = 1 / Math.hypot(tangent, 1);
  const sine = tangent * cosine;
  for (let k = 0; k < size; k += 1) {
    const [atP, atQ] = [matrix[k * size + p]!, matrix[k * size + q]!];
    matrix[k * size + p] = cosine * atP - sine * atQ;
    matrix[k * size + q] = sine * atP + cosine * atQ;
  }
  for (let k = 0; k < size; k += 1) {
    const [atP, atQ] = [matrix[p * size + k]!, matrix[q * size + k]!];
    matrix[p * size + k] = cosine * atP - sine * atQ;
    matrix[q * size + k] = sine * atP + cosine * atQ;
  }
}
