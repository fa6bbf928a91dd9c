import { OutOfRangeError } from '../refuse/out-of-range-error.ts';
import { requireRange } from '../refuse/require-range.ts';
import { latinHypercubeColumn } from './latin-hypercube-column.ts';

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
  const slices = new Float64Array(draws);
  keys.forEach((key, column) => {
    latinHypercubeColumn({ key, seed }, slices);
    for (let i = 0; i < draws; i += 1) table[i * keys.length + column] = slices[i]!;
  });
  return table;
}
