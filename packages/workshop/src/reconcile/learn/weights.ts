/** Halvings of the search for how flat weights must be. */
const halvings = 30;

/**
 * Weights that sum to 1, made flatter until they are worth a share of the draws.
 *
 * Equation: w_i ∝ exp(τ l_i), τ the greatest up to 1 with (Σw)²/Σw² of at least that share of the draws
 *
 * @param logarithms - l, of the weights, up to a constant; −∞ weighs nothing
 * @param share - of the draws, 1; 0 leaves the weights as they are
 * @returns the weights
 */
export function temperedWeights(logarithms: Float64Array, share: number): Float64Array {
  const wanted = share * logarithms.length;
  const whole = weightsAt(logarithms, 1);
  if (effectiveSize(whole) >= wanted) return whole;
  let [low, high] = [0, 1];
  for (let pass = 0; pass < halvings; pass += 1) {
    const middle = (low + high) / 2;
    if (effectiveSize(weightsAt(logarithms, middle)) >= wanted) low = middle;
    else high = middle;
  }
  return weightsAt(logarithms, low);
}

/**
 * How many draws of equal weight weighted ones are worth.
 *
 * Equation: (Σ w)² / Σ w²
 *
 * @param weights - of any common size
 * @returns draws, 1
 */
export function effectiveSize(weights: Float64Array): number {
  let [sum, squares] = [0, 0];
  for (const weight of weights) {
    sum += weight;
    squares += weight * weight;
  }
  return squares > 0 ? (sum * sum) / squares : 0;
}

function weightsAt(logarithms: Float64Array, flatness: number): Float64Array {
  const most = logarithms.reduce((greatest, each) => Math.max(greatest, each), -Infinity);
  const weights = logarithms.map((each) => (each === -Infinity ? 0 : Math.exp(flatness * (each - most))));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => weight / sum);
}
