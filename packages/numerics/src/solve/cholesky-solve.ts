/**
 * Solves a symmetric system whose triangle is known.
 *
 * Equation: L Lᵀ x = b, forward, then back
 * Valid: a triangle from `choleskyRoot`.
 *
 * @param root - L, row by row, n times n numbers, root of the unit of the matrix
 * @param right - b, n numbers of any unit; not changed
 * @returns x, n numbers, unit of b over that of the matrix
 * Source: [golub-van-loan]
 * @example
 * choleskySolve([2, 0, 1, 2], [8, 14]) // => [0.75, 2.5]
 */
export function choleskySolve(root: ArrayLike<number>, right: ArrayLike<number>): Float64Array {
  const size = right.length;
  const x = Float64Array.from(right);
  for (let i = 0; i < size; i += 1) {
    for (let k = 0; k < i; k += 1) x[i] = x[i]! - root[i * size + k]! * x[k]!;
    x[i] = x[i]! / root[i * size + i]!;
  }
  for (let i = size - 1; i >= 0; i -= 1) {
    for (let k = i + 1; k < size; k += 1) x[i] = x[i]! - root[k * size + i]! * x[k]!;
    x[i] = x[i]! / root[i * size + i]!;
  }
  return x;
}
