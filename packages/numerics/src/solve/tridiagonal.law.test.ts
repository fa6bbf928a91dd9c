import fc from 'fast-check';
import { expect, test } from 'vitest';
import { tridiagonal } from './tridiagonal.ts';

test('the answer put back in gives the right side, for every dominant chain', () => {
  const row = fc.tuple(...Array.from({ length: 4 }, () => fc.double({ min: -1, max: 1, noNaN: true })));
  fc.assert(
    fc.property(fc.array(row, { minLength: 1, maxLength: 80 }), (rows) => {
      const lower = Float64Array.from(rows, (r) => r[0]!);
      const upper = Float64Array.from(rows, (r) => r[1]!);
      const diagonal = Float64Array.from(
        rows,
        (r, i) => 1e-3 + Math.abs(r[2]!) + Math.abs(lower[i]!) + Math.abs(upper[i]!),
      );
      const right = Float64Array.from(rows, (r) => r[3]!);
      const x = tridiagonal({ lower, diagonal: diagonal.slice(), upper, right: right.slice() });
      const size = Math.max(1, ...x.map(Math.abs));
      rows.forEach((_, i) => {
        const before = i > 0 ? lower[i]! * x[i - 1]! : 0;
        const after = i < rows.length - 1 ? upper[i]! * x[i + 1]! : 0;
        expect(Math.abs(before + diagonal[i]! * x[i]! + after - right[i]!)).toBeLessThan(1e-12 * size);
      });
    }),
  );
});
