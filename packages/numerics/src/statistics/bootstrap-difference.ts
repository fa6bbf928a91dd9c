import type { RandomGenerator } from 'pure-rand/types/RandomGenerator';
import { requireRange } from '../refuse/require-range.ts';
import { randomGenerator } from '../sample/random-generator.ts';
import type { Interval } from './interval.ts';
import { mean } from './mean.ts';
import { sortedQuantile } from './sorted-quantile.ts';

export interface BootstrapPlan {
  /** Any finite number. */
  readonly seed: number;
  /** c, 1, above 0 and under 1. 0.95 where not given. */
  readonly confidence?: number;
  /** How many times both sets are drawn anew. 10,000 where not given. */
  readonly draws?: number;
}

/**
 * Where the difference of two means lies, by drawing both sets anew from themselves: no assumption about their shape.
 *
 * Equation: quantiles (1±c)/2 of x̄_1* - x̄_2*, each set drawn with replacement from itself
 * Assumes: values independent within each set.
 * Valid: with fewer than about ten values in a set the interval comes out too narrow; read it beside Welch's.
 *
 * @param first - any unit, at least one value
 * @param second - unit of the first, at least one value
 * @param plan - seed, confidence, draws
 * @returns interval of first minus second, unit of the values
 * @throws OutOfRangeError where a set is empty or holds a value that is not finite
 * Source: [efron-tibshirani]
 * @example
 * bootstrapDifference([5, 5, 5], [3, 3, 3], { seed: 1 }).low // => 2
 */
export function bootstrapDifference(
  first: ArrayLike<number>,
  second: ArrayLike<number>,
  plan: BootstrapPlan,
): Interval {
  const observed = mean(first) - mean(second);
  const draws = requireRange('number of draws', plan.draws ?? 10_000, '', 1, 1e8);
  const confidence = requireRange('confidence', plan.confidence ?? 0.95, '', 1e-9, 1 - 1e-12);
  const generator = randomGenerator(plan.seed, 'bootstrap');
  const fromFirst = centered(first);
  const fromSecond = centered(second);
  const differences = new Float64Array(draws);
  for (let draw = 0; draw < draws; draw += 1) {
    differences[draw] = observed + redrawnMean(fromFirst, generator) - redrawnMean(fromSecond, generator);
  }
  differences.sort();
  return {
    low: sortedQuantile(differences, (1 - confidence) / 2),
    high: sortedQuantile(differences, (1 + confidence) / 2),
  };
}

function centered(values: ArrayLike<number>): Float64Array {
  const center = mean(values);
  return Float64Array.from(values, (value) => value - center);
}

/** The upper bits of 32 pick the value: for sets of stops even to 1e-7, and a third of the time of an exact draw. */
function redrawnMean(values: Float64Array, generator: RandomGenerator): number {
  const count = values.length;
  const share = count / 2 ** 32;
  let sum = 0;
  for (let i = 0; i < count; i += 1) sum += values[Math.floor((generator.next() >>> 0) * share)]!;
  return sum / count;
}
