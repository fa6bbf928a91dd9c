import { OutOfRangeError } from '../refuse/out-of-range-error.ts';
import { leastSquares } from './least-squares.ts';
import { leastSquaresWeights } from './least-squares-weights.ts';
import type { Estimate } from './t-interval.ts';

/** A fit whose groups scatter each in its own way. */
export interface GroupLeastSquares {
  /** One for each column, with standard error and degrees of freedom of its own. */
  readonly terms: readonly Estimate[];
  /** s_g of each group about the fit, unit of y. */
  readonly standardDeviations: readonly number[];
  /** f_g of each group, 1: its rows less what the fit takes of them. */
  readonly degreesOfFreedom: readonly number[];
}

/** Degrees of freedom of a group under which its scatter is not known at all. */
const fewestLeft = 1e-6;

/**
 * A fit with covariates where groups of rows may scatter differently: Welch's test, with more terms. With nothing but a
 * constant and a step between two groups it is Welch's test exactly.
 *
 * Equation: b_j = Σ c_ji y_i as `leastSquares`; f_g = Σ_g (1 − h_i), h_i = Σ_j x_ji c_ji; s_g² = Σ_g e_i² / f_g;
 * v_jg = s_g² Σ_g c_ji²; s_bj = √Σ_g v_jg, ν_j = (Σ_g v_jg)² / Σ_g (v_jg² / f_g)
 * Assumes: columns exact; errors of y independent, about normal, of one size within each group.
 * Valid: more rows than columns, no column a mix of the others, and each group with rows to spare; the intervals are
 * near their confidence, not exact (simulated in the law tests).
 *
 * @param columns - x_j, each as long as values, any units
 * @param values - y, any unit
 * @param groups - g of each row, whole numbers from 0 on
 * @returns the weights, units of y over those of the columns; scatter, unit of y
 * @throws OutOfRangeError where there are too few rows, in all or in a group, lengths differ, or columns are mixes
 * Source: [satterthwaite-1946]
 * @example
 * groupLeastSquares([[1, 1, 1, 1, 1, 1], [0, 0, 0, 1, 1, 1]], [1, 2, 3, 6, 8, 10], [0, 0, 0, 1, 1, 1]).terms[1].degreesOfFreedom // => 2.94118
 */
export function groupLeastSquares(
  columns: readonly ArrayLike<number>[],
  values: ArrayLike<number>,
  groups: ArrayLike<number>,
): GroupLeastSquares {
  if (groups.length !== values.length)
    throw new OutOfRangeError('number of groups', groups.length, '', values.length, values.length);
  const { coefficients } = leastSquares(columns, values);
  const weights = leastSquaresWeights(columns);
  const left = rowsLeft(columns, weights, groups);
  const least = left.find((each) => !(each >= fewestLeft));
  if (least !== undefined)
    throw new OutOfRangeError('rows that a group has to spare', least, '', fewestLeft, Infinity);
  const squares = left.map(() => 0);
  for (let i = 0; i < values.length; i += 1)
    squares[groups[i]!] = squares[groups[i]!]! + (values[i]! - fitAt(columns, coefficients, i)) ** 2;
  const variances = squares.map((sum, group) => sum / left[group]!);
  return {
    terms: weights.map((weight, j) => estimateOf(coefficients[j]!, partsOf(weight, groups, variances), left)),
    standardDeviations: variances.map((variance) => Math.sqrt(variance)),
    degreesOfFreedom: left,
  };
}

/** f_g: the rows of each group less what the fit takes of them. */
function rowsLeft(
  columns: readonly ArrayLike<number>[],
  weights: readonly Float64Array[],
  groups: ArrayLike<number>,
): readonly number[] {
  const left = Array.from({ length: Math.max(...Array.from(groups)) + 1 }, () => 0);
  for (let i = 0; i < groups.length; i += 1) {
    const taken = weights.reduce((sum, weight, j) => sum + weight[i]! * columns[j]![i]!, 0);
    left[groups[i]!] = left[groups[i]!]! + 1 - taken;
  }
  return left;
}

function fitAt(columns: readonly ArrayLike<number>[], coefficients: Float64Array, row: number): number {
  return columns.reduce((sum, column, j) => sum + coefficients[j]! * column[row]!, 0);
}

/** v_g: what each group's scatter adds to the variance of a weight. */
function partsOf(
  weight: Float64Array,
  groups: ArrayLike<number>,
  variances: readonly number[],
): readonly number[] {
  const parts = variances.map(() => 0);
  weight.forEach((each, i) => (parts[groups[i]!] = parts[groups[i]!]! + each ** 2 * variances[groups[i]!]!));
  return parts;
}

function estimateOf(value: number, parts: readonly number[], left: readonly number[]): Estimate {
  const variance = parts.reduce((sum, part) => sum + part, 0);
  const shares = parts.reduce((sum, part, group) => sum + (part / variance) ** 2 / left[group]!, 0);
  const all = left.reduce((sum, each) => sum + each, 0);
  return {
    value,
    standardError: Math.sqrt(variance),
    degreesOfFreedom: variance > 0 ? 1 / shares : all,
  };
}
