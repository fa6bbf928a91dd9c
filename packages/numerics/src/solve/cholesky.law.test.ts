import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { choleskyRoot } from './cholesky-root.ts';
import { choleskySolve } from './cholesky-solve.ts';

const anyNumber = fc.integer({ min: -1000, max: 1000 }).map((whole) => whole / 100);

/** B Bᵀ + I, and a right side. */
const anySystem = fc.integer({ min: 1, max: 8 }).chain((size) =>
  fc.record({
    size: fc.constant(size),
    factors: fc.array(anyNumber, { minLength: size * size, maxLength: size * size }),
    right: fc.array(anyNumber, { minLength: size, maxLength: size }),
  }),
);

function matrixOf(factors: readonly number[], size: number): number[] {
  return factors.map((_, place) => {
    const [row, column] = [Math.floor(place / size), place % size];
    const inner = Array.from(
      { length: size },
      (__, k) => factors[row * size + k]! * factors[column * size + k]!,
    );
    return inner.reduce((sum, value) => sum + value, row === column ? 1 : 0);
  });
}

describe('the triangle of a symmetric matrix', () => {
  it('gives the matrix back, and solves it', () => {
    fc.assert(
      fc.property(anySystem, ({ size, factors, right }) => {
        const matrix = matrixOf(factors, size);
        const most = Math.max(...matrix.map(Math.abs));
        const root = choleskyRoot(matrix, size);
        matrix.forEach((value, place) => {
          const [row, column] = [Math.floor(place / size), place % size];
          let product = 0;
          for (let k = 0; k < size; k += 1) product += root[row * size + k]! * root[column * size + k]!;
          expect(Math.abs(product - value)).toBeLessThan(1e-12 * most);
        });
        const x = choleskySolve(root, right);
        right.forEach((value, row) => {
          let sum = 0;
          for (let k = 0; k < size; k += 1) sum += matrix[row * size + k]! * x[k]!;
          expect(Math.abs(sum - value)).toBeLessThan(1e-9 * most);
        });
      }),
      { numRuns: 500 },
    );
  });

  it('is refused where a row is a mix of others, and where the size does not fit', () => {
    expect(() => choleskyRoot([1, 1, 1, 1], 2)).toThrow('what only column 2 holds');
    expect(() => choleskyRoot([1, 2, 3], 2)).toThrow('numbers in the matrix');
  });
});
