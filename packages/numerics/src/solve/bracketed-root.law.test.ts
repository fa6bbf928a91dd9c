import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bracketedRoot } from './bracketed-root.ts';

test('the root is found to the tolerance wherever it lies and however bent the curve is', () => {
  const root = fc.double({ min: -50, max: 50, noNaN: true });
  const power = fc.constantFrom(1 / 3, 0.7, 1, 3, 5);
  const tolerance = fc.constantFrom(1e-3, 1e-8, 1e-12);
  fc.assert(
    fc.property(root, power, tolerance, fc.boolean(), (where, bend, limit, falling) => {
      const value = (x: number): number =>
        (falling ? -1 : 1) * Math.sign(x - where) * Math.abs(x - where) ** bend;
      const found = bracketedRoot(value, { low: -60, high: 71, tolerance: limit });
      expect(Math.abs(found - where)).toBeLessThanOrEqual(limit + 1e-14 * Math.abs(where) * 4);
    }),
    { numRuns: 2000 },
  );
});
