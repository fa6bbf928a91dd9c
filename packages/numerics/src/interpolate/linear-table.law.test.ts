import fc from 'fast-check';
import { expect, test } from 'vitest';
import { linearTable } from './linear-table.ts';

const table = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 1000 }), fc.integer({ min: -1000, max: 1000 })), {
    minLength: 1,
    maxLength: 40,
  })
  .map((rows) => {
    let x = 0;
    return { xs: rows.map(([gap]) => (x += gap)), ys: rows.map(([, y]) => y) };
  });

test('never outside the values beside it, and on a straight line between them', () => {
  fc.assert(
    fc.property(table, fc.double({ min: -100, max: 50_000, noNaN: true }), ({ xs, ys }, x) => {
      const y = linearTable(xs, ys, x);
      const right = xs.findIndex((point) => point > x);
      const from = right === 0 ? 0 : (right < 0 ? xs.length : right) - 1;
      const to = right < 0 ? from : right;
      const expected =
        from === to
          ? ys[from]!
          : ys[from]! + ((ys[to]! - ys[from]!) * (x - xs[from]!)) / (xs[to]! - xs[from]!);
      const wanted = x < xs[0]! ? ys[0]! : expected;
      expect(Math.abs(y - wanted)).toBeLessThanOrEqual(1e-10);
    }),
    { numRuns: 2000 },
  );
});
