import { OutOfRangeError } from '../refuse/out-of-range-error.ts';
import { requireRange } from '../refuse/require-range.ts';

/**
 * The value under which a share of the weight lies.
 *
 * Equation: by straight lines through (c_i, x_(i)), c_i = (Σ_{k<i} w_k + w_i/2) / Σ w; the outermost values beyond them
 * Assumes: values that weigh nothing, or are not numbers, are not there.
 *
 * @param values - x, any unit, in any order
 * @param weights - w, not below zero, any common unit; as long as values
 * @param probability - share of the weight, 0 to 1
 * @returns the quantile, unit of the values
 * @throws OutOfRangeError where nothing weighs anything, lengths differ, or the probability is outside
 * Source: [common-practice]
 * @example
 * weightedQuantile([3, 1, 2], [1, 1, 2], 0.5) // => 2
 */
export function weightedQuantile(
  values: ArrayLike<number>,
  weights: ArrayLike<number>,
  probability: number,
): number {
  if (weights.length !== values.length)
    throw new OutOfRangeError('number of weights', weights.length, '', values.length, values.length);
  const share = requireRange('probability', probability, '', 0, 1);
  const order = Array.from({ length: values.length }, (_, i) => i)
    .filter((i) => weights[i]! > 0 && Number.isFinite(values[i]))
    .sort((a, b) => values[a]! - values[b]! || weights[a]! - weights[b]!);
  let total = 0;
  for (const i of order) total += weights[i]!;
  if (!(total > 0)) throw new OutOfRangeError('sum of the weights', total, '', 0, Infinity);
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
}
