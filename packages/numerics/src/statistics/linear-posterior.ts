import { OutOfRangeError } from '../refuse/out-of-range-error.ts';
import { choleskyRoot } from '../solve/cholesky-root.ts';
import { choleskySolve } from '../solve/cholesky-solve.ts';
import { symmetricEigenvalues } from '../solve/symmetric-eigenvalues.ts';

export interface LinearPosteriorInput {
  /** x_j, each as long as values. */
  readonly columns: readonly ArrayLike<number>[];
  /** y. */
  readonly values: ArrayLike<number>;
  /** σ_i, one standard deviation of each value, unit of y, above zero. */
  readonly spreads: ArrayLike<number>;
  /** What is known of each weight beforehand; Infinity where nothing is. */
  readonly priors: readonly { readonly mean: number; readonly spread: number }[];
}

/** What values and prior knowledge together say of the weights. */
export interface LinearPosterior {
  /** One for each column, unit of y over unit of the column. */
  readonly means: Float64Array;
  /** One standard deviation of each, same units. */
  readonly spreads: Float64Array;
  /** Σ ((y − Xθ) / σ)² of the values alone, 1. */
  readonly chiSquared: number;
  /** Greatest over least singular value of the whitened columns, each scaled to length 1; priors left out. */
  readonly condition: number;
}

/**
 * The weights of several columns, from values of known spread and from what is known of the weights beforehand.
 *
 * Equation: θ = θ_0 + V Xᵀ W (y − X θ_0), V = (Xᵀ W X + P)⁻¹, W = 1/σ², P = 1/prior spread²; columns scaled by
 * the prior spreads (else to length 1), then Cholesky.
 * Assumes: errors of y independent and normal with the stated spreads; normal priors, independent of each other.
 * Valid: 1 to 64 columns; what no value and no prior tells apart is refused.
 *
 * @param input - columns, any units; values and their spreads, any unit; prior mean and spread of each weight
 * @returns means and spreads, unit of y over unit of the column; χ², 1; condition number, 1
 * @throws OutOfRangeError where lengths differ, a spread is not above zero, or weights can't be told apart at all
 * Source: [golub-van-loan]
 * @example
 * linearPosterior({ columns: [[1, 1], [0, 1]], values: [1, 3], spreads: [0.1, 0.1], priors: [{ mean: 0, spread: Infinity }, { mean: 0, spread: Infinity }] }).means[1] // => 2
 */
export function linearPosterior(input: LinearPosteriorInput): LinearPosterior {
  requireLengths(input);
  const { columns, priors, values, spreads } = input;
  const size = columns.length;
  const lengths = Float64Array.from(columns, (column) => whitenedLength(column, spreads));
  const condition = conditionOf(gramOf(columns, spreads, lengths), size);
  const scales = lengths.map((length, j) => (priors[j]!.spread < Infinity ? 1 / priors[j]!.spread : length));
  const gram = gramOf(columns, spreads, scales);
  const start = priors.map(({ mean, spread }) => (Number.isFinite(spread) ? mean : 0));
  const right = columns.map((column, j) => {
    let sum = 0;
    for (let i = 0; i < values.length; i += 1)
      sum += (column[i]! / scales[j]!) * ((values[i]! - at(columns, start, i)) / spreads[i]! ** 2);
    return sum;
  });
  priors.forEach(({ spread }, j) => {
    if (Number.isFinite(spread)) gram[j * size + j] = gram[j * size + j]! + 1;
  });
  const root = choleskyRoot(gram, size);
  const moves = choleskySolve(root, right);
  const means = Float64Array.from(moves, (move, j) => start[j]! + move / scales[j]!);
  let chiSquared = 0;
  for (let i = 0; i < values.length; i += 1)
    chiSquared += ((values[i]! - at(columns, means, i)) / spreads[i]!) ** 2;
  return { means, spreads: spreadsOf(root, size, scales), chiSquared, condition };
}

function requireLengths({ columns, values, spreads, priors }: LinearPosteriorInput): void {
  const rows = values.length;
  for (const { length } of [...columns, spreads])
    if (length !== rows) throw new OutOfRangeError('length of a column', length, '', rows, rows);
  if (priors.length !== columns.length)
    throw new OutOfRangeError('number of priors', priors.length, '', columns.length, columns.length);
  const spread = Array.from(spreads).find((each) => !(each > 0 && each < Infinity));
  if (spread !== undefined) throw new OutOfRangeError('spread of a value', spread, '', 0, Infinity);
  const prior = priors.find((each) => !(each.spread > 0));
  if (prior !== undefined) throw new OutOfRangeError('prior spread', prior.spread, '', 0, Infinity);
}

/** Σ x_ij θ_j. */
function at(columns: readonly ArrayLike<number>[], weights: ArrayLike<number>, row: number): number {
  let sum = 0;
  for (let j = 0; j < columns.length; j += 1) sum += columns[j]![row]! * weights[j]!;
  return sum;
}

/** A column of nothing but zeros keeps the length 1. */
function whitenedLength(column: ArrayLike<number>, spreads: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < column.length; i += 1) sum += (column[i]! / spreads[i]!) ** 2;
  return sum > 0 ? Math.sqrt(sum) : 1;
}

function gramOf(
  columns: readonly ArrayLike<number>[],
  spreads: ArrayLike<number>,
  scales: Float64Array,
): Float64Array {
  const size = columns.length;
  const gram = new Float64Array(size * size);
  for (let j = 0; j < size; j += 1)
    for (let k = 0; k < size; k += 1) {
      let sum = 0;
      for (let i = 0; i < spreads.length; i += 1)
        sum += ((columns[j]![i]! / scales[j]!) * (columns[k]![i]! / scales[k]!)) / spreads[i]! ** 2;
      gram[j * size + k] = sum;
    }
  return gram;
}

function conditionOf(gram: Float64Array, size: number): number {
  const values = symmetricEigenvalues(gram, size);
  const [least, most] = [values[0]!, values[size - 1]!];
  return least > most * 1e-15 ? Math.sqrt(most / least) : Infinity;
}

/** Roots of the diagonal of (L Lᵀ)⁻¹, back in the units of the weights. */
function spreadsOf(root: Float64Array, size: number, scales: Float64Array): Float64Array {
  return Float64Array.from({ length: size }, (_, j) => {
    const unit = Array.from({ length: size }, (__, k) => (k === j ? 1 : 0));
    return Math.sqrt(choleskySolve(root, unit)[j]!) / scales[j]!;
  });
}
