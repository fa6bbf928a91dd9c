import type { GaussianState } from './gaussian-state.ts';

/** One number that was read, and what it has to do with the unknowns. */
export interface Reading {
  /** z, any unit. */
  value: number;
  /** H, n values: the reading is H x with an error. */
  readonly row: Float64Array;
  /** R, unit of the reading squared. */
  variance: number;
}

/** How far a reading was from what was expected of it. Overwritten by the next one. */
export interface Innovation {
  /** z - H x, unit of the reading. */
  difference: number;
  /** H P Hᵀ + R, unit of the reading squared. */
  variance: number;
}

/**
 * Makes the update of a Kalman filter, which takes one reading into a belief.
 *
 * Equation: S = H P Hᵀ + R, K = P Hᵀ/S, x ← x + K (z - H x), P ← (I - K H) P (I - K H)ᵀ + K R Kᵀ (Joseph's form)
 * Assumes: a linear reading with a normal error, independent of everything else.
 *
 * Joseph's form keeps P symmetric and its diagonal above zero where rounding would not. The update allocates nothing;
 * several readings at one moment are taken in one by one.
 *
 * @param size - n, 1
 * @returns overwrites a state with what is believed after a reading, and gives the innovation
 * Source: [durbin-koopman], [joseph-form]
 * @example
 * kalmanUpdater(1)({ mean: Float64Array.of(0), covariance: Float64Array.of(1) }, { value: 2, row: [1], variance: 1 }).variance // => 2
 */
export function kalmanUpdater(size: number): (state: GaussianState, reading: Reading) => Innovation {
  const spread = new Float64Array(size);
  const gain = new Float64Array(size);
  const half = new Float64Array(size * size);
  const back = new Float64Array(size);
  const innovation: Innovation = { difference: 0, variance: 0 };
  return ({ mean, covariance }, { value, row, variance }) => {
    let expected = 0;
    let total = variance;
    for (let i = 0; i < size; i += 1) {
      let sum = 0;
      for (let k = 0; k < size; k += 1) sum += covariance[i * size + k]! * row[k]!;
      spread[i] = sum;
      expected += row[i]! * mean[i]!;
      total += row[i]! * sum;
    }
    const difference = value - expected;
    for (let i = 0; i < size; i += 1) {
      gain[i] = spread[i]! / total;
      mean[i] = mean[i]! + gain[i]! * difference;
    }
    // M = (I - K H) P, then M (I - K H)ᵀ + K R Kᵀ = M - (M Hᵀ) Kᵀ + K R Kᵀ.
    for (let i = 0; i < size; i += 1) {
      let sum = 0;
      for (let j = 0; j < size; j += 1) {
        const kept = covariance[i * size + j]! - gain[i]! * spread[j]!;
        half[i * size + j] = kept;
        sum += kept * row[j]!;
      }
      back[i] = sum - gain[i]! * variance;
    }
    for (let i = 0; i < size; i += 1)
      for (let j = 0; j <= i; j += 1) {
        const left = half[i * size + j]! - back[i]! * gain[j]!;
        covariance[i * size + j] = left;
        covariance[j * size + i] = left;
      }
    innovation.difference = difference;
    innovation.variance = total;
    return innovation;
  };
}
