import { OutOfRangeError } from '../refuse/out-of-range-error.ts';

/**
 * The mean, to the last digit even where the values are large and close together.
 *
 * Equation: x̄ = Σ x_i / n, summed as differences from the first value
 *
 * @param values - x_i, any unit; at least one
 * @returns x̄, unit of the values
 * @throws OutOfRangeError where there is no value, or one is not finite
 * @example
 * mean([3, 4, 8]) // => 5
 */
export function mean(values: ArrayLike<number>): number {
  const count = values.length;
  if (count < 1) throw new OutOfRangeError('number of values', count, '', 1, Infinity);
  const first = values[0]!;
  let sum = 0;
  let lost = 0;
  for (let i = 0; i < count; i += 1) {
    if (!Number.isFinite(values[i]!)) throw new OutOfRangeError('value', values[i]!, '', -Infinity, Infinity);
    const part = values[i]! - first - lost;
    const next = sum + part;
    lost = next - sum - part;
    sum = next;
  }
  return first + sum / count;
}
