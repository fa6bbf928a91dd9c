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
 * The step allocates nothing and skips the zeros of F, of which there are many; P stays symmetric to the last bit.
 *
 * @param size - n, 1
 * @returns overwrites a state with its prediction; F, Q and the state must all be of size n
 * Source: [durbin-koopman]
 * @example
 * ((level) => (kalmanPredictor(1)(level, { transition: [1], noise: [3] }), level.covariance[0]))({ mean: Float64Array.of(2), covariance: Float64Array.of(1) }) // => 4
 */
export function kalmanPredictor(size: number): (state: GaussianState, step: LinearStep) => void {
  const mean = new Float64Array(size);
  const half = new Float64Array(size * size);
  return ({ mean: before, covariance }, { transition, noise }) => {
    mean.fill(0);
    half.fill(0);
    for (let i = 0; i < size; i += 1)
      for (let k = 0; k < size; k += 1) {
        const factor = transition[i * size + k]!;
        if (factor === 0) continue;
        mean[i] = mean[i]! + factor * before[k]!;
        for (let j = 0; j < size; j += 1)
          half[i * size + j] = half[i * size + j]! + factor * covariance[k * size + j]!;
      }
    before.set(mean);
    covariance.set(noise);
    for (let j = 0; j < size; j += 1)
      for (let k = 0; k < size; k += 1) {
        const factor = transition[j * size + k]!;
        if (factor === 0) continue;
        for (let i = j; i < size; i += 1)
          covariance[i * size + j] = covariance[i * size + j]! + half[i * size + k]! * factor;
      }
    for (let i = 1; i < size; i += 1)
      for (let j = 0; j < i; j += 1) covariance[j * size + i] = covariance[i * size + j]!;
  };
}
