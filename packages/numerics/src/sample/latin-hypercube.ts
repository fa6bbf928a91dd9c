import { OutOfRangeError } from '../refuse/out-of-range-error.ts';
import { requireRange } from '../refuse/require-range.ts';
import { randomStream } from './random-stream.ts';

export interface LatinHypercubePlan {
  /** n, how many draws. */
  readonly draws: number;
  /** One name for each dimension, no two alike; a column depends on seed, draws and its own name only. */
  readonly keys: readonly string[];
  /** Any finite number. */
  readonly seed: number;
}

/**
 * Random draws that fill every dimension evenly: each of the n equal slices of each dimension is hit exactly once.
 *
 * Because a column depends on its own name only, two plans that share names share those columns: the draws are
 * paired.
 *
 * Equation: u_ij = (π_j(i) + r_ij) / n, π_j a random order of 0 … n-1, r_ij uniform in 0 … 1
 *
 * @param plan - number of draws, names of the dimensions, seed
 * @returns n × d numbers in 0 (included) to 1 (excluded), row by row: draw i, dimension j at i d + j
 * @throws OutOfRangeError where there is no draw, or two names are alike
 * Source: [mckay-1979]
 * @example
 * latinHypercube({ draws: 4, keys: ['mass', 'grip'], seed: 1 }).length // => 8
 */
export function latinHypercube(plan: LatinHypercubePlan): Float64Array {
  const { draws, keys, seed } = plan;
  requireRange('number of draws', draws, '', 1, 1e9);
  const different = new Set(keys).size;
  if (different !== keys.length)
    throw new OutOfRangeError('different names', different, '', keys.length, keys.length);
  const table = new Float64Array(draws * keys.length);
  const order = new Float64Array(draws);
  keys.forEach((key, column) => {
    const stream = randomStream(seed, key);
    for (let i = 0; i < draws; i += 1) order[i] = i;
    stream.shuffle(order);
    for (let i = 0; i < draws; i += 1) {
      table[i * keys.length + column] = insideSlice(order[i]!, stream.uniform(), draws);
    }
  });
  return table;
}

/** (slice + within) / draws, kept under the slice's upper edge when rounding would reach it. */
function insideSlice(slice: number, within: number, draws: number): number {
  const place = (slice + within) / draws;
  const edge = (slice + 1) / draws;
  return place < edge ? place : edge * (1 - Number.EPSILON);
}
