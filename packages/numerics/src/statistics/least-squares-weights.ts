import { leastSquares } from './least-squares.ts';

/**
 * How much each value counts in each weight that `leastSquares` finds.
 *
 * Equation: b_j = Σ_i c_ji y_i, c_j row j of (XᵀX)⁻¹Xᵀ: the fits of values that are 1 in one row and 0 in the others
 *
 * @param columns - x_j, all as long as each other, any units
 * @returns for each column the c of each row, 1 over the unit of the column
 * @throws OutOfRangeError where there are too few rows, lengths differ, or a column is a mix of the others
 * Source: [golub-van-loan]
 * @example
 * leastSquaresWeights([[1, 1, 1, 1]])[0][2] // => 0.25
 */
export function leastSquaresWeights(columns: readonly ArrayLike<number>[]): readonly Float64Array[] {
  const rows = columns[0]?.length ?? 0;
  const weights = columns.map(() => new Float64Array(rows));
  const unit = new Float64Array(rows);
  for (let row = 0; row < rows; row += 1) {
    unit[row] = 1;
    const { coefficients } = leastSquares(columns, unit);
    weights.forEach((weight, j) => (weight[row] = coefficients[j]!));
    unit[row] = 0;
  }
  return weights;
}
