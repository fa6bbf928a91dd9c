import { joeKuoDirections } from './joe-kuo-directions.ts';

/** Bits of a coordinate: 2^32 points without a repeat. */
export const sobolBits = 32;

const lines = joeKuoDirections.trim().split('\n');

/** How many dimensions have direction numbers. */
export const sobolDimensions = lines.length + 1;

/**
 * Answers the direction numbers of one dimension of the Sobol sequence.
 *
 * Equation: v_k = m_k 2^(32−k), m_k = 2 a_1 m_(k−1) ⊕ 4 a_2 m_(k−2) ⊕ … ⊕ 2^s m_(k−s) ⊕ m_(k−s)
 * Valid: dimension 0 to `sobolDimensions` − 1.
 *
 * @param dimension - 0 for the first, 1
 * @returns v_1 … v_32 as 32-bit fractions, 1
 * Source: [joe-kuo-2008]
 * @example
 * sobolDirections(0)[0] // => 2147483648
 */
export function sobolDirections(dimension: number): Uint32Array {
  const directions = new Uint32Array(sobolBits);
  const [polynomial = 0, ...starts] = (lines[dimension - 1] ?? '').split(' ').map(Number);
  const degree = dimension === 0 ? 0 : starts.length;
  for (let k = 0; k < sobolBits; k += 1) {
    if (dimension === 0) directions[k] = 2 ** (sobolBits - 1 - k);
    else if (k < degree) directions[k] = starts[k]! * 2 ** (sobolBits - 1 - k);
    else directions[k] = nextDirection(directions, k, degree, polynomial);
  }
  return directions;
}

/** The recurrence, on the fractions themselves: a shift of m becomes none of v. */
function nextDirection(directions: Uint32Array, k: number, degree: number, polynomial: number): number {
  const oldest = directions[k - degree]!;
  let next = oldest ^ (oldest >>> degree);
  for (let i = 1; i < degree; i += 1) {
    if (((polynomial >>> (degree - 1 - i)) & 1) === 1) next ^= directions[k - i]!;
  }
  return next >>> 0;
}
