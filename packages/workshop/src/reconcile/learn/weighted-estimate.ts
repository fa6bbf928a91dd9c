import { weightedQuantiles } from '@standstill/numerics';
import type { Estimate } from '../../results/estimate.ts';

/**
 * The mean of weighted draws with the interval that 95 % of their weight falls into.
 *
 * @param values - one a draw
 * @param weights - one a draw, summing to 1; a draw without a value must weigh nothing
 * @returns the estimate, unit of the values
 */
export function weightedEstimate(values: Float64Array, weights: Float64Array): Estimate {
  let value = 0;
  let [least, most] = [Infinity, -Infinity];
  for (let i = 0; i < values.length; i += 1) {
    if (!(weights[i]! > 0)) continue;
    value += weights[i]! * values[i]!;
    if (values[i]! < least) least = values[i]!;
    if (values[i]! > most) most = values[i]!;
  }
  if (least === most) return { value: least, low: least, high: least };
  const [low, high] = weightedQuantiles(values, weights, [0.025, 0.975]) as unknown as [number, number];
  return { value, low: Math.min(low, value), high: Math.max(high, value) };
}
