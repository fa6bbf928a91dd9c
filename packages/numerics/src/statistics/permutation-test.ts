import { requireRange } from '../refuse/require-range.ts';
import { randomStream } from '../sample/random-stream.ts';
import { arrangements } from './arrangements.ts';
import { mean } from './mean.ts';

export interface PermutationPlan {
  /** For the random orders, where there are too many to try all; any finite number. */
  readonly seed: number;
  /** Up to this many arrangements are all tried; beyond, orders are drawn. 200,000 where not given. */
  readonly mostExact?: number;
  /** How many orders are drawn then. 20,000 where not given. */
  readonly draws?: number;
}

export interface PermutationTest {
  /** Mean of the first minus mean of the second, unit of the values. */
  readonly difference: number;
  /** Share of arrangements whose difference is at least as large either way, 0 to 1. */
  readonly p: number;
  /** True where all arrangements were tried. */
  readonly exact: boolean;
  /** How many arrangements were looked at, 1. */
  readonly tried: number;
}

/** Values centered on their mean, so that a group's sum says how far its mean is from the other's. */
interface Pool {
  readonly values: Float64Array;
  /** Size of the smaller group. */
  readonly picked: number;
  /** |sum| that counts as at least as large as the observed one: ties count although rounding shifts them. */
  readonly threshold: number;
}

/**
 * Whether two sets differ more than the same values would by mere order: no assumption about their shape.
 *
 * Equation: p = share of the C(n_1+n_2, n_1) arrangements with |x̄_1 - x̄_2| at least as large as observed; drawn
 * orders count the observed one as one of them: p = (1 + hits) / (1 + draws)
 * Assumes: were there no difference, any value could have come in any order (no drift over the run order).
 * Valid: with three against three p can't fall below 0.1.
 *
 * @param first - any unit, at least one value
 * @param second - unit of the first, at least one value
 * @param plan - seed, and how many to try
 * @returns the test, unit of the values
 * @throws OutOfRangeError where a set is empty or holds a value that is not finite
 * Source: [fisher-1935]
 * @example
 * permutationTest([1, 2, 3], [7, 8, 9], { seed: 1 }).p // => 0.1
 */
export function permutationTest(
  first: ArrayLike<number>,
  second: ArrayLike<number>,
  plan: PermutationPlan,
): PermutationTest {
  const difference = mean(first) - mean(second);
  const pool = centeredPool(first, second);
  const ways = arrangements(pool.values.length, pool.picked);
  if (ways <= (plan.mostExact ?? 200_000)) {
    return { difference, p: countAll(pool) / ways, exact: true, tried: ways };
  }
  const draws = requireRange('number of draws', plan.draws ?? 20_000, '', 1, 1e9);
  const hits = countDrawn(pool, draws, plan.seed);
  return { difference, p: (1 + hits) / (1 + draws), exact: false, tried: draws };
}

function centeredPool(first: ArrayLike<number>, second: ArrayLike<number>): Pool {
  const small = first.length <= second.length ? first : second;
  const large = small === first ? second : first;
  const raw = Float64Array.from([...Array.from(small), ...Array.from(large)]);
  const center = mean(raw);
  const values = raw.map((value) => value - center);
  const observed = Math.abs(values.subarray(0, small.length).reduce((sum, value) => sum + value, 0));
  const scale = values.reduce((sum, value) => sum + Math.abs(value), 0);
  const rounding = 1e-12 * scale + 1e-15 * values.length * Math.abs(center);
  return { values, picked: small.length, threshold: observed - rounding };
}

/** Goes through all ways to pick, in dictionary order; sums[i] is the sum of the first i picked values. */
function countAll({ values, picked, threshold }: Pool): number {
  const total = values.length;
  const chosen = Int32Array.from({ length: picked }, (_, i) => i);
  const sums = new Float64Array(picked + 1);
  let from = 0;
  let hits = 0;
  for (;;) {
    for (let i = from; i < picked; i += 1) sums[i + 1] = sums[i]! + values[chosen[i]!]!;
    if (Math.abs(sums[picked]!) >= threshold) hits += 1;
    from = picked - 1;
    while (from >= 0 && chosen[from] === total - picked + from) from -= 1;
    if (from < 0) return hits;
    chosen[from] = chosen[from]! + 1;
    for (let i = from + 1; i < picked; i += 1) chosen[i] = chosen[i - 1]! + 1;
  }
}

/** Draws which values go into the smaller group by shuffling only as far as it reaches. */
function countDrawn({ values, picked, threshold }: Pool, draws: number, seed: number): number {
  const stream = randomStream(seed, 'permutation');
  const order = values.slice();
  let hits = 0;
  for (let draw = 0; draw < draws; draw += 1) {
    let sum = 0;
    for (let i = 0; i < picked; i += 1) {
      const j = i + stream.below(order.length - i);
      const held = order[j]!;
      order[j] = order[i]!;
      order[i] = held;
      sum += held;
    }
    if (Math.abs(sum) >= threshold) hits += 1;
  }
  return hits;
}
