import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { symmetricEigenvalues } from '../solve/symmetric-eigenvalues.ts';
import { leastSquares } from './least-squares.ts';
import { linearPosterior } from './linear-posterior.ts';

const anyNumber = fc.integer({ min: -1000, max: 1000 }).map((whole) => whole / 100);
const open = { mean: 0, spread: Infinity };

/** Three columns of n rows, the values and their common spread. */
const anyRows = fc.integer({ min: 5, max: 12 }).chain((rows) => {
  const column = fc.array(anyNumber, { minLength: rows, maxLength: rows });
  return fc.record({ columns: fc.array(column, { minLength: 3, maxLength: 3 }), values: column });
});

describe('weights from values and priors', () => {
  it('are those of the reflections where nothing is known beforehand', () => {
    fc.assert(
      fc.property(anyRows, ({ columns, values }) => {
        const spreads = values.map(() => 0.5);
        const priors = [open, open, open];
        let ours: ReturnType<typeof linearPosterior>;
        try {
          ours = linearPosterior({ columns, values, spreads, priors });
        } catch {
          return;
        }
        fc.pre(ours.condition < 1e3 && columns.every((column) => column.some((value) => value !== 0)));
        const theirs = leastSquares(columns, values);
        const size = Math.max(...theirs.coefficients.map(Math.abs), 1e-3);
        ours.means.forEach((mean, j) =>
          expect(Math.abs(mean - theirs.coefficients[j]!) / size).toBeLessThan(1e-8),
        );
        fc.pre(theirs.residualStandardDeviation > 1e-6);
        ours.spreads.forEach((spread, j) => {
          const wanted = (0.5 * theirs.standardErrors[j]!) / theirs.residualStandardDeviation;
          expect(spread / wanted).toBeCloseTo(1, 6);
        });
      }),
      { numRuns: 500 },
    );
  });

  it('are never less sure than the prior, and are the prior where the values say nothing', () => {
    fc.assert(
      fc.property(anyRows, anyNumber, ({ columns, values }, mean) => {
        const spreads = values.map(() => 1);
        const silent = values.map(() => 0);
        const priors = [...columns.map(() => ({ mean: 0, spread: 2 })), { mean, spread: 3 }];
        const found = linearPosterior({ columns: [...columns, silent], values, spreads, priors });
        found.spreads.forEach((spread, j) =>
          expect(spread).toBeLessThanOrEqual(priors[j]!.spread * (1 + 1e-12)),
        );
        expect([found.means[3], found.spreads[3]]).toEqual([expect.closeTo(mean, 9), expect.closeTo(3, 9)]);
      }),
      { numRuns: 500 },
    );
  });

  it('refuses columns that nothing tells apart, and takes them with a prior', () => {
    const same = [1, 2, 3, 4];
    const rest = { columns: [same, same], values: [2, 4, 6, 8], spreads: [1, 1, 1, 1] };
    expect(() => linearPosterior({ ...rest, priors: [open, open] })).toThrow('what only column 2 holds');
    const known = { mean: 0.5, spread: 0.1 };
    const split = linearPosterior({ ...rest, priors: [known, open] });
    expect([...split.means]).toEqual([expect.closeTo(0.5, 9), expect.closeTo(1.5, 9)]);
    expect(split.condition).toBe(Infinity);
  });
});

describe('eigenvalues', () => {
  it('sum to the trace, and their squares to the squares of the matrix', () => {
    const anyMatrix = fc
      .integer({ min: 1, max: 8 })
      .chain((size) =>
        fc
          .array(anyNumber, { minLength: size * size, maxLength: size * size })
          .map((numbers) => ({ numbers, size })),
      );
    fc.assert(
      fc.property(anyMatrix, ({ numbers, size }) => {
        const matrix = numbers.map((_, place) => {
          const [row, column] = [Math.floor(place / size), place % size];
          return row <= column ? numbers[place]! : numbers[column * size + row]!;
        });
        const values = symmetricEigenvalues(matrix, size);
        const trace = matrix.reduce((sum, value, place) => sum + (place % (size + 1) === 0 ? value : 0), 0);
        const squares = matrix.reduce((sum, value) => sum + value * value, 0);
        expect(values.reduce((sum, value) => sum + value, 0)).toBeCloseTo(trace, 8);
        expect(values.reduce((sum, value) => sum + value * value, 0)).toBeCloseTo(squares, 6);
      }),
      { numRuns: 500 },
    );
  });
});
