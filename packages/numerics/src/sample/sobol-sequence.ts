import { OutOfRangeError } from '../refuse/out-of-range-error.ts';
import { requireRange } from '../refuse/require-range.ts';
import { latinHypercube } from './latin-hypercube.ts';
import { sobolColumn } from './sobol-column.ts';
import { sobolDimensions } from './sobol-directions.ts';

export interface SobolPlan {
  /** n, how many draws; a power of two keeps them balanced. */
  readonly draws: number;
  /** One name for each dimension, no two alike; the first ones get the sequence's best dimensions. */
  readonly keys: readonly string[];
  /** Any finite number; it counts only where `scramble` is not false. */
  readonly seed: number;
  /** False for the plain sequence, which starts at zero; true where left out. */
  readonly scramble?: boolean;
}

/**
 * Draws that fill all dimensions together more evenly than chance does: Sobol's low-discrepancy sequence.
 *
 * Among 2^k draws every one of 2^k equal slices of each dimension is hit exactly once, as in a Latin hypercube, and
 * pairs and triples of dimensions are filled evenly as well. Dimensions beyond the 337 that have direction numbers are
 * filled by a Latin hypercube.
 *
 * Equation: x_i = ⊕ of v_k over the bits of the Gray code of i, by random linear scramble and shift of bits
 * Valid: up to 2^31 draws.
 *
 * @param plan - number of draws, names of the dimensions, seed
 * @returns n × d numbers in 0 (included) to 1 (excluded), row by row: draw i, dimension j at i d + j
 * @throws OutOfRangeError where there is no draw, or two names are alike
 * Source: [joe-kuo-2008], [matousek-1998]
 * @example
 * sobolSequence({ draws: 4, keys: ['mass', 'grip'], seed: 1, scramble: false })[5] // => 0.25
 */
export function sobolSequence(plan: SobolPlan): Float64Array {
  const { draws, keys, seed, scramble = true } = plan;
  requireRange('number of draws', draws, '', 1, 1e9);
  const different = new Set(keys).size;
  if (different !== keys.length)
    throw new OutOfRangeError('different names', different, '', keys.length, keys.length);
  const table = new Float64Array(draws * keys.length);
  const points = new Float64Array(draws);
  keys.slice(0, sobolDimensions).forEach((key, dimension) => {
    sobolColumn({ dimension, key, seed, scramble }, points);
    for (let i = 0; i < draws; i += 1) table[i * keys.length + dimension] = points[i]!;
  });
  const beyond = keys.slice(sobolDimensions);
  if (beyond.length > 0) fillBeyond(table, keys.length, latinHypercube({ draws, keys: beyond, seed }));
  return table;
}

function fillBeyond(table: Float64Array, width: number, rest: Float64Array): void {
  const narrow = width - sobolDimensions;
  for (let i = 0; i * width < table.length; i += 1) {
    for (let j = 0; j < narrow; j += 1) table[i * width + sobolDimensions + j] = rest[i * narrow + j]!;
  }
}
