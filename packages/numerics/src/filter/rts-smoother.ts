import type { GaussianState } from './gaussian-state.ts';

/** What a step forward left behind, and what is known at its end by hindsight. */
export interface BackwardStep {
  /** F, n × n row by row, of the step. */
  readonly transition: Float64Array;
  /** Before the step; overwritten with what is known there by hindsight. */
  readonly filtered: GaussianState;
  /** After the step, as predicted, before any reading. */
  readonly predicted: GaussianState;
  /** After the step, by hindsight. */
  readonly smoothed: GaussianState;
}

/** A pivot smaller than this share of its own size is what rounding left of zero. */
const nothing = 1e-14;

/**
 * Makes the backward step of the Rauch-Tung-Striebel smoother: what all later readings say of an earlier moment.
 *
 * Equation: G = P Fᵀ P₋⁻¹, xs ← x + G (xs' - x₋), Ps ← P + G (Ps' - P₋) Gᵀ; x₋ and P₋ as predicted, ' the next moment
 * Assumes: the steps and readings of the Kalman filter that went before. What was predicted without any doubt tells
 * nothing backward, so that P₋ may be singular.
 *
 * The step allocates nothing.
 *
 * @param size - n, 1
 * @returns overwrites `filtered` with the smoothed state
 * Source: [rauch-tung-striebel]
 */
export function rtsSmoother(size: number): (step: BackwardStep) => void {
  const factor = new Float64Array(size * size);
  const gain = new Float64Array(size * size);
  const change = new Float64Array(size * size);
  const half = new Float64Array(size);
  const shift = new Float64Array(size);
  return ({ transition, filtered, predicted, smoothed }) => {
    factorize(factor, predicted.covariance, size);
    gain.fill(0);
    for (let j = 0; j < size; j += 1)
      for (let k = 0; k < size; k += 1) {
        const weight = transition[j * size + k]!;
        if (weight === 0) continue;
        for (let i = 0; i < size; i += 1)
          gain[i * size + j] = gain[i * size + j]! + filtered.covariance[i * size + k]! * weight;
      }
    for (let i = 0; i < size; i += 1) solveRow(factor, gain, i * size, size);
    const ahead = smoothed.covariance;
    const expected = predicted.covariance;
    for (let k = 0; k < change.length; k += 1) change[k] = ahead[k]! - expected[k]!;
    for (let k = 0; k < size; k += 1) shift[k] = smoothed.mean[k]! - predicted.mean[k]!;
    addChange(filtered, gain, change, shift, half, size);
  };
}

/** x + G shift and P + G change Gᵀ, row by row. */
function addChange(
  { mean, covariance }: GaussianState,
  gain: Float64Array,
  change: Float64Array,
  shift: Float64Array,
  half: Float64Array,
  size: number,
): void {
  for (let i = 0; i < size; i += 1) {
    const row = i * size;
    let moved = 0;
    half.fill(0);
    for (let k = 0; k < size; k += 1) {
      const weight = gain[row + k]!;
      if (weight === 0) continue;
      moved += weight * shift[k]!;
      const from = k * size;
      for (let j = 0; j < size; j += 1) half[j] = half[j]! + weight * change[from + j]!;
    }
    mean[i] = mean[i]! + moved;
    for (let j = 0; j <= i; j += 1) {
      const other = j * size;
      let spread = covariance[row + j]!;
      for (let k = 0; k < size; k += 1) spread += half[k]! * gain[other + k]!;
      covariance[row + j] = spread;
      covariance[other + i] = spread;
    }
  }
}

/** Cholesky's lower triangle, its diagonal inverted; zero where a pivot is nothing. */
function factorize(factor: Float64Array, matrix: Float64Array, size: number): void {
  for (let j = 0; j < size; j += 1) {
    const upper = j * size;
    for (let i = j; i < size; i += 1) {
      const row = i * size;
      let sum = matrix[row + j]!;
      for (let k = 0; k < j; k += 1) sum -= factor[row + k]! * factor[upper + k]!;
      if (i > j) factor[row + j] = sum * factor[upper + j]!;
      else factor[row + i] = sum > nothing * matrix[row + i]! ? 1 / Math.sqrt(sum) : 0;
    }
  }
}

/** Solves L Lᵀ x = row in place. */
function solveRow(factor: Float64Array, rows: Float64Array, start: number, size: number): void {
  for (let i = 0; i < size; i += 1) {
    const row = i * size;
    let sum = rows[start + i]!;
    for (let k = 0; k < i; k += 1) sum -= factor[row + k]! * rows[start + k]!;
    rows[start + i] = sum * factor[row + i]!;
  }
  for (let i = size - 1; i >= 0; i -= 1) {
    let sum = rows[start + i]!;
    for (let k = i + 1; k < size; k += 1) sum -= factor[k * size + i]! * rows[start + k]!;
    rows[start + i] = sum * factor[i * size + i]!;
  }
}
