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
  const half = new Float64Array(size * size);
  return ({ transition, filtered, predicted, smoothed }) => {
    factorize(factor, predicted.covariance, size);
    for (let i = 0; i < size; i += 1) {
      for (let j = 0; j < size; j += 1) {
        let sum = 0;
        for (let k = 0; k < size; k += 1)
          sum += filtered.covariance[i * size + k]! * transition[j * size + k]!;
        gain[i * size + j] = sum;
      }
      solveRow(factor, gain, i * size, size);
    }
    for (let k = 0; k < change.length; k += 1) change[k] = smoothed.covariance[k]! - predicted.covariance[k]!;
    for (let i = 0; i < size; i += 1) {
      let moved = 0;
      for (let j = 0; j < size; j += 1) {
        moved += gain[i * size + j]! * (smoothed.mean[j]! - predicted.mean[j]!);
        let sum = 0;
        for (let k = 0; k < size; k += 1) sum += gain[i * size + k]! * change[k * size + j]!;
        half[i * size + j] = sum;
      }
      filtered.mean[i] = filtered.mean[i]! + moved;
      for (let j = 0; j <= i; j += 1) {
        let spread = filtered.covariance[i * size + j]!;
        for (let k = 0; k < size; k += 1) spread += half[i * size + k]! * gain[j * size + k]!;
        filtered.covariance[i * size + j] = spread;
        filtered.covariance[j * size + i] = spread;
      }
    }
  };
}

/** Cholesky's lower triangle, its diagonal inverted; zero where a pivot is nothing. */
function factorize(factor: Float64Array, matrix: Float64Array, size: number): void {
  for (let j = 0; j < size; j += 1)
    for (let i = j; i < size; i += 1) {
      let sum = matrix[i * size + j]!;
      for (let k = 0; k < j; k += 1) sum -= factor[i * size + k]! * factor[j * size + k]!;
      if (i > j) factor[i * size + j] = sum * factor[j * size + j]!;
      else factor[i * size + i] = sum > nothing * matrix[i * size + i]! ? 1 / Math.sqrt(sum) : 0;
    }
}

/** Solves L Lᵀ x = row in place. */
function solveRow(factor: Float64Array, rows: Float64Array, start: number, size: number): void {
  for (let i = 0; i < size; i += 1) {
    let sum = rows[start + i]!;
    for (let k = 0; k < i; k += 1) sum -= factor[i * size + k]! * rows[start + k]!;
    rows[start + i] = sum * factor[i * size + i]!;
  }
  for (let i = size - 1; i >= 0; i -= 1) {
    let sum = rows[start + i]!;
    for (let k = i + 1; k < size; k += 1) sum -= factor[k * size + i]! * rows[start + k]!;
    rows[start + i] = sum * factor[i * size + i]!;
  }
}
