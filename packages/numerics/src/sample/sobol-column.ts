import { requireRange } from '../refuse/require-range.ts';
import { scrambledDirections } from './scrambled-directions.ts';
import type { SobolColumn } from './scrambled-directions.ts';
import { sobolDimensions, sobolDirections } from './sobol-directions.ts';

export interface SobolColumnPlan {
  /** Which dimension of the sequence, 0 for the first. */
  readonly dimension: number;
  /** Name of the dimension: it and the seed decide the scramble. */
  readonly key: string;
  /** Any finite number; it counts only where `scramble` is not false. */
  readonly seed: number;
  /** Number of the first point wanted; 0 where left out. */
  readonly from?: number;
  /** False for the plain sequence, which starts at zero; true where left out. */
  readonly scramble?: boolean;
}

const words = 2 ** 32;

/**
 * Fills an array with consecutive draws of one dimension of a Sobol sequence: the same numbers as that dimension of
 * `sobolSequence`, for those who keep dimension after dimension or go on where they stopped.
 *
 * Equation: x_i = ⊕ of v_k over the bits of the Gray code of i, shifted
 * Valid: dimension 0 to `sobolDimensions` − 1; points up to 2^31.
 *
 * @param plan - dimension, name, seed, first point
 * @param into - n numbers long; gets numbers in 0 (included) to 1 (excluded)
 * @throws OutOfRangeError where the dimension has no direction numbers
 * Source: [joe-kuo-2008], [matousek-1998]
 */
export function sobolColumn(
  { dimension, key, seed, from = 0, scramble = true }: SobolColumnPlan,
  into: { [index: number]: number; readonly length: number },
): void {
  requireRange('dimension', dimension, '', 0, sobolDimensions - 1);
  requireRange('first point', from, '', 0, 2 ** 31 - 1);
  const { directions, shift }: SobolColumn = scramble
    ? scrambledDirections(dimension, seed, key)
    : { directions: sobolDirections(dimension), shift: 0 };
  let point = shift;
  const gray = from ^ (from >>> 1);
  for (let bit = 0; bit < 32; bit += 1) if (((gray >>> bit) & 1) === 1) point ^= directions[bit]!;
  for (let i = 0; i < into.length; i += 1) {
    into[i] = (point >>> 0) / words;
    const number = from + i;
    point ^= directions[31 - Math.clz32(~number & (number + 1))]!; // the lowest zero bit of its number
  }
}
