import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator';
import { requireRange } from '../refuse/require-range.ts';
import { randomGenerator } from './random-generator.ts';

export interface LatinHypercubeColumnPlan {
  /** Name of the dimension; the column depends on seed, draws and this name only. */
  readonly key: string;
  /** Any finite number. */
  readonly seed: number;
}

interface Column {
  [index: number]: number;
  readonly length: number;
}

/**
 * Fills an array with the draws of one dimension of a Latin hypercube: each of its n equal slices is hit exactly once.
 * The same numbers as that dimension of `latinHypercube`, for those who keep dimension after dimension.
 *
 * Equation: u_i = (π(i) + r_i) / n, π a random order of 0 … n-1, r_i uniform in 0 … 1
 *
 * Allocates no more than the generator that it reads; the order is that of the stream's own `shuffle`.
 *
 * @param plan - name of the dimension, seed
 * @param into - n numbers long; gets numbers in 0 (included) to 1 (excluded)
 * @throws OutOfRangeError where there is no draw
 * Source: [mckay-1979]
 */
export function latinHypercubeColumn({ key, seed }: LatinHypercubeColumnPlan, into: Column): void {
  requireRange('number of draws', into.length, '', 1, 1e9);
  putInSlices(randomGenerator(seed, key), into);
}

function putInSlices(generator: RandomGenerator, into: Column): void {
  const draws = into.length;
  for (let i = 0; i < draws; i += 1) into[i] = i;
  for (let i = draws - 1; i > 0; i -= 1) {
    const j = uniformInt(generator, 0, i);
    const held = into[i]!;
    into[i] = into[j]!;
    into[j] = held;
  }
  for (let i = 0; i < draws; i += 1) into[i] = insideSlice(into[i]!, uniformFloat64(generator), draws);
}

/** (slice + within) / draws, kept under the slice's upper edge when rounding would reach it. */
function insideSlice(slice: number, within: number, draws: number): number {
  const place = (slice + within) / draws;
  const edge = (slice + 1) / draws;
  return place < edge ? place : edge * (1 - Number.EPSILON);
}
