import type { SensitivitySample } from './sobol-indices.ts';

/** Estimates of one output. */
export interface IndexEstimate {
  readonly mean: number;
  readonly variance: number;
  /** S and S_T, one for each group. */
  readonly first: Float64Array;
  readonly total: Float64Array;
}

/**
 * Answers first-order and total indices from the runs, all rows or some of them.
 *
 * Equation: as `sobolIndices`
 *
 * @param sample - runs from A, B and every mix
 * @param rows - which rows to count, each as often as it is named; all where left out
 * @returns mean and variance in the unit of the output; S and S_T, 1
 * Source: [saltelli-2010], [jansen-1999]
 */
export function estimateIndices(
  { fromA, fromB, mixed }: SensitivitySample,
  rows?: ArrayLike<number>,
): IndexEstimate {
  const count = rows?.length ?? fromA.length;
  let sum = 0;
  for (let i = 0; i < count; i += 1) {
    const row = rows === undefined ? i : rows[i]!;
    sum += fromA[row]! + fromB[row]!;
  }
  const mean = sum / (2 * count);
  const first = new Float64Array(mixed.length);
  const total = new Float64Array(mixed.length);
  let squares = 0;
  for (let i = 0; i < count; i += 1) {
    const row = rows === undefined ? i : rows[i]!;
    const [a, b] = [fromA[row]! - mean, fromB[row]! - mean];
    squares += a * a + b * b;
    for (let group = 0; group < mixed.length; group += 1) {
      const moved = mixed[group]![row]! - fromA[row]!;
      first[group] = first[group]! + b * moved;
      total[group] = total[group]! + moved * moved;
    }
  }
  const variance = squares / (2 * count);
  for (let group = 0; group < mixed.length; group += 1) {
    first[group] = first[group]! / (count * variance);
    total[group] = total[group]! / (2 * count * variance);
  }
  return { mean, variance, first, total };
}
