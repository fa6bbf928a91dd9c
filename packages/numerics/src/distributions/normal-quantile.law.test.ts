import quantile from '@stdlib/stats-base-dists-normal-quantile';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { normalCdf } from './normal-cdf.ts';
import { normalDensity } from './normal-density.ts';
import { normalQuantile } from './normal-quantile.ts';

test('the middle is what the library answers, to its last digits', () => {
  let worst = 0;
  fc.assert(
    fc.property(fc.double({ min: 0.07, max: 0.93, noNaN: true }), (p) => {
      const expected = quantile(p, 0, 1);
      const off = Math.abs(normalQuantile(p) - expected) / Math.max(1e-3, Math.abs(expected));
      worst = Math.max(worst, off);
      expect(off).toBeLessThan(4e-15);
    }),
    { numRuns: 5000 },
  );
  console.log(
    `the middle of the normal quantile differs from the library by ${worst.toExponential(1)} at most`,
  );
});

test('it undoes the distribution everywhere, and grows across the seams of its parts', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-12, max: 1 - 1e-12, noNaN: true }), (p) => {
      const z = normalQuantile(p);
      expect(Math.abs(normalCdf(z) - p) / normalDensity(z)).toBeLessThan(1e-4);
      expect(Math.abs(normalCdf(z) - p)).toBeLessThan(1e-14);
    }),
    { numRuns: 2000 },
  );
  for (const seam of [0.001, 0.075, 0.925]) {
    const around = [-3e-14, -1e-14, 0, 1e-14, 3e-14].map((step) => normalQuantile(seam + step));
    expect(around).toEqual([...around].sort((a, b) => a - b));
  }
});
