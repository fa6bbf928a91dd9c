import { OutOfRangeError } from '../refuse/out-of-range-error.ts';
import { requireRange } from '../refuse/require-range.ts';

/**
 * The values under which given shares of the weight lie.
 *
 * Equation: by straight lines through (c_i, x_(i)), c_i = (Σ_{k<i} w_k + w_i/2) / Σ w; the outermost values beyond them
 * Assumes: values that weigh nothing, or are not numbers, are not there.
 *
 * @param values - x, any unit, in any order
 * @param weights - w, not below zero, any common unit; as long as values
 * @param probabilities - shares of the weight, 0 to 1, ascending
 * @returns one quantile a share, unit of the values
 * @throws OutOfRangeError where nothing weighs anything, lengths differ, or a probability is outside
 * Source: [common-practice]
 * @example
 * weightedQuantiles([3, 1, 2], [1, 1, 2], [0.5]) // => [2]
 */
export function weightedQuantiles(
  values: ArrayLike<number>,
  weights: ArrayLike<number>,
  probabilities: readonly number[],
): Float64Array {
  if (weights.length !== values.length)
    throw new OutOfRangeError('number of weights', weights.length, '', values.length, values.length);
  const order = inOrder(values, weights);
  let total = 0;
  for (const i of order) total += weights[i]!;
  if (!(total > 0)) throw new OutOfRangeError('sum of the weights', total, '', 0, Infinity);
  return Float64Array.from(probabilities, (probability) => {
    const share = requireRange('probability', probability, '', 0, 1);
    let sum = 0;
    let [place, value] = [-Infinity, NaN];
    for (const i of order) {
      const at = (sum + weights[i]! / 2) / total;
      if (at >= share)
        return place === -Infinity
          ? values[i]!
          : value + ((share - place) / (at - place)) * (values[i]! - value);
      sum += weights[i]!;
      [place, value] = [at, values[i]!];
    }
    return value;
  });
}

/** Places of what weighs something, by value; those of one value by weight, so that their order does not count. */
function inOrder(values: ArrayLike<number>, weights: ArrayLike<number>): Uint32Array {
  const places = new Uint32Array(values.length);
  let count = 0;
  for (let i = 0; i < values.length; i += 1)
    if (weights[i]! > 0 && Number.isFinite(values[i])) {
      places[count] = i;
      count += 1;
    }
  return places.subarray(0, count).sort((a, b) => values[a]! - values[b]! || weights[a]! - weights[b]!);
}
