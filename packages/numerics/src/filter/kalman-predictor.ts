import type { GaussianState } from './gaussian-state.ts';

/** How n unknowns go from one moment to the next. */
export interface LinearStep {
  /** F, n × n row by row. */
  readonly transition: Float64Array;
  /** Q, n × n row by row, symmetric: what is added to the covariance on the way. */
  readonly noise: Float64Array;
}

/**
 * Makes the forward step of a Kalman filter, which takes a belief to the next moment.
 *
 * Equation: x ← F x, P ← F P Fᵀ + Q
 * Assumes: a linear step with normal noise that is independent of everything before.
 *
 * The step allocates nothing; P stays symmetric to the last bit.
 *
 * @param size - n, 1
 * @returns overwrites a state with its prediction; F, Q and the state must all be of size n
 * Source: [durbin-koopman]
 * @example
 * const level = { mean: Float64Array.of(2), covariance: Float64Array.of(1) };
 * kalmanPredictor(1)(level, { transition: Float64Array.of(1), noise: Float64Array.of(3) });
 * level.covariance[0] // => 4
 */
export function kalmanPredictor(size: number): (state: GaussianState, step: LinearStep) => void {
  const mean = new Float64Array(size);
  const half = new Float64Array(size * size);
  return (state, { transition, noise }) => {
    multiply(half, transition, state.covariance, size);
    for (let i = 0; i < size; i += 1) {
      let sum = 0;
      for (let k = 0; k < size; k += 1) sum += transition[i * size + k]! * state.mean[k]!;
      mean[i] = sum;
      for (let j = 0; j <= i; j += 1) {
        let spread = noise[i * size + j]!;
        for (let k = 0; k < size; k += 1) spread += half[i * size + k]! * transition[j * size + k]!;
        state.covariance[i * size + j] = spread;
        state.covariance[j * size + i] = spread;
      }
    }
    state.mean.set(mean);
  };
}

/** Skips the zeros of the left factor, of which a transition has many. */
function multiply(product: Float64Array, left: Float64Array, right: Float64Array, size: number): void {
  product.fill(0);
  for (let i = 0; i < size; i += 1)
    for (let k = 0; k < size; k += 1) {
      const factor = left[i * size + k]!;
      if (factor === 0) continue;
      for (let j = 0; j < size; j += 1)
        product[i * size + j] = product[i * size + j]! + factor * right[k * size + j]!;
    }
}
