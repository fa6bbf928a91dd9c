import { requireRange } from '../refuse/require-range.ts';
import { randomStream } from './random-stream.ts';

export interface LatinHypercubeColumnPlan {
  /** Name of the dimension; the column depends on seed, draws and this name only. */
  readonly key: string;
  /** Any finite number. */
  readonly seed: number;
}

/**
 * Fills an array with the draws of one dimension of a Latin hypercube: each of its n equal slices is hit exactly once.
 * The same numbers as that dimension of `latinHypercube`, for those who keep dimension after dimension.
 *
 * Equation: u_i = (π(i) + r_i) / n, π a random order of 0 … n-1, r_i uniform in 0 … 1
 *
 * Allocates no more than the stream that it reads.
 *
 * @param plan - name of the dimension, seed
 * @param into - n numbers long; gets numbers in 0 (included) to 1 (excluded)
 * @throws OutOfRangeError where there is no draw
 * Source: [mckay-1979]
 */
export function latinHypercubeColumn(
  { key, seed }: LatinHypercubeColumnPlan,
  into: { [index: number]: number; readonly length: number },
): void {
  const draws = requireRange('number of draws', into.length, '', 1, 1e9);
  const stream = randomStream(seed, key);
  for (let i = 0; i < draws; i += 1) into[i] = i;
  stream.shuffle(into);
  for (let i = 0; i < draws; i += 1) into[i] = insideSlice(into[i]!, stream.uniform(), draws);
}

/** (slice + within) / draws, kept under the slice's upper edge when rounding would reach it. */
function insideSlice(slice: number, within: number, draws: number): number {
  const place = (slice + within) / draws;
  const edge = (slice + 1) / draws;
  return place < edge ? place : edge * (1 - Number.EPSILON);
}
