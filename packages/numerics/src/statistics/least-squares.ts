import { OutOfRangeError } from '../refuse/out-of-range-error.ts';

/** A fit of several terms, with how sure it is. */
export interface LeastSquares {
  /** One for each column, unit of y over unit of the column. */
  readonly coefficients: Float64Array;
  /** One for each column, same units. */
  readonly standardErrors: Float64Array;
  /** s of the points about the fit, unit of y. */
  readonly residualStandardDeviation: number;
  /** n - p, 1. */
  readonly degreesOfFreedom: number;
}

/**
 * The weights of several columns whose sum comes nearest to the values: a fit with covariates.
 *
 * Equation: y ≈ Σ b_j x_j, by reflections (Householder QR) of the columns; s_bj = s |row j of R⁻¹|
 * Assumes: columns exact; errors of y independent, about normal, of one size. A constant term is a column of ones.
 * Valid: more rows than columns, no column a mix of the others (to 1e-10 of its size).
 *
 * @param columns - x_j, each as long as values, any units
 * @param values - y, any unit
 * @returns the weights, units of y over those of the columns
 * @throws OutOfRangeError where there are too few rows, lengths differ, or a column is a mix of the others
 * Source: [golub-van-loan]
 * @example
 * leastSquares([[1, 1, 1, 1], [0, 1, 2, 3]], [1, 3, 5, 7.4]).coefficients[1] // => 2.12
 */
export function leastSquares(columns: readonly ArrayLike<number>[], values: ArrayLike<number>): LeastSquares {
  const rows = values.length;
  const terms = columns.length;
  if (rows <= terms) throw new OutOfRangeError('number of rows', rows, '', terms + 1, Infinity);
  const matrix = columns.map((column) => columnOf(column, rows));
  const right = columnOf(values, rows);
  const diagonal = reflectAll(matrix, right);
  const coefficients = backSubstitute(matrix, diagonal, right.slice(0, terms));
  const degreesOfFreedom = rows - terms;
  const residual = right.subarray(terms).reduce((sum, value) => sum + value * value, 0);
  const residualStandardDeviation = Math.sqrt(residual / degreesOfFreedom);
  const standardErrors = inverseRowLengths(matrix, diagonal).map(
    (length) => length * residualStandardDeviation,
  );
  return { coefficients, standardErrors, residualStandardDeviation, degreesOfFreedom };
}

function columnOf(values: ArrayLike<number>, rows: number): Float64Array {
  if (values.length !== rows) throw new OutOfRangeError('length of a column', values.length, '', rows, rows);
  const column = Float64Array.from(values);
  const bad = column.find((value) => !Number.isFinite(value));
  if (bad !== undefined) throw new OutOfRangeError('value', bad, '', -Infinity, Infinity);
  return column;
}

/** Turns the columns into an upper triangle in place (diagonal apart) and the right side with them. */
function reflectAll(matrix: readonly Float64Array[], right: Float64Array): Float64Array {
  const diagonal = new Float64Array(matrix.length);
  const sizes = matrix.map((column) => lengthFrom(column, 0));
  matrix.forEach((column, k) => {
    const length = lengthFrom(column, k);
    const least = 1e-10 * sizes[k]!;
    if (!(length > least)) {
      throw new OutOfRangeError(`what only column ${k + 1} holds`, length, '', least, Infinity);
    }
    const turned = column[k]! > 0 ? -length : length;
    diagonal[k] = turned;
    column[k] = column[k]! - turned;
    for (const other of [...matrix.slice(k + 1), right]) reflect(column, other, k);
  });
  return diagonal;
}

function lengthFrom(column: Float64Array, start: number): number {
  let sum = 0;
  for (let i = start; i < column.length; i += 1) sum += column[i]! ** 2;
  return Math.sqrt(sum);
}

function reflect(mirror: Float64Array, other: Float64Array, start: number): void {
  let along = 0;
  let size = 0;
  for (let i = start; i < mirror.length; i += 1) {
    along += mirror[i]! * other[i]!;
    size += mirror[i]! ** 2;
  }
  const factor = (2 * along) / size;
  for (let i = start; i < mirror.length; i += 1) other[i] = other[i]! - factor * mirror[i]!;
}

/** Solves R b = right in place; R's upper part is in the rows above each column's mirror. */
function backSubstitute(
  matrix: readonly Float64Array[],
  diagonal: Float64Array,
  right: Float64Array,
): Float64Array {
  for (let j = right.length - 1; j >= 0; j -= 1) {
    right[j] = right[j]! / diagonal[j]!;
    for (let i = 0; i < j; i += 1) right[i] = right[i]! - matrix[j]![i]! * right[j]!;
  }
  return right;
}

/** Length of each row of R⁻¹: its columns are what R b = e_k solves to. */
function inverseRowLengths(matrix: readonly Float64Array[], diagonal: Float64Array): Float64Array {
  const squares = new Float64Array(diagonal.length);
  for (let k = 0; k < diagonal.length; k += 1) {
    const unit = new Float64Array(diagonal.length);
    unit[k] = 1;
    backSubstitute(matrix, diagonal, unit);
    for (let j = 0; j < unit.length; j += 1) squares[j] = squares[j]! + unit[j]! ** 2;
  }
  return squares.map((square) => Math.sqrt(square));
}
