import { randomStream } from './random-stream.ts';
import { sobolBits, sobolDirections } from './sobol-directions.ts';

/** One dimension of the sequence: its direction numbers and the shift that all its points share, 32-bit fractions. */
export interface SobolColumn {
  readonly directions: Uint32Array;
  readonly shift: number;
}

const words = 2 ** sobolBits;

/**
 * Answers the direction numbers of one dimension after a random scramble, so that the seed matters and every point by
 * itself is uniform, while the points together stay as even as they were.
 *
 * Equation: v_k' = L v_k over bits, L lower triangular with ones on its diagonal and random bits below it; the points are
 * shifted by one random word, bit by bit
 *
 * @param dimension - 0 for the first, 1
 * @param seed - any finite number, 1
 * @param key - name of the dimension: it and the seed decide the scramble
 * @returns directions and shift, 32-bit fractions, 1
 * Source: [matousek-1998]
 * @example
 * scrambledDirections(0, 1, 'grip').directions[0] >= 2 ** 31 // => true
 */
export function scrambledDirections(dimension: number, seed: number, key: string): SobolColumn {
  const stream = randomStream(seed, `sobol/${key}`);
  const shift = stream.below(words);
  const directions = new Uint32Array(sobolBits);
  const plain = sobolDirections(dimension);
  for (let bit = 0; bit < sobolBits; bit += 1) {
    // Row of L for this digit (0 is the greatest): itself, and any of the greater digits.
    const place = sobolBits - 1 - bit;
    const above = bit === 0 ? 0 : stream.below(2 ** bit) * 2 ** (place + 1);
    const row = (above + 2 ** place) >>> 0;
    for (let k = 0; k < sobolBits; k += 1) {
      if (parity(row & plain[k]!) === 1) directions[k] = (directions[k]! | (1 << place)) >>> 0;
    }
  }
  return { directions, shift };
}

function parity(word: number): number {
  let bits = word;
  bits ^= bits >>> 16;
  bits ^= bits >>> 8;
  bits ^= bits >>> 4;
  bits ^= bits >>> 2;
  bits ^= bits >>> 1;
  return bits & 1;
}
