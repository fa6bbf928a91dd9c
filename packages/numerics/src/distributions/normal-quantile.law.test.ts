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

test('farther out it is what the library answers, or undoes the distribution where that has more digits', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 0.075, noNaN: true }), (p) => {
      expect(Math.abs(normalQuantile(p) / quantile(p, 0, 1) - 1)).toBeLessThan(2e-14);
      expect(Math.abs(normalQuantile(1 - p) / quantile(1 - p, 0, 1) - 1)).toBeLessThan(2e-14);
    }),
    { numRuns: 5000 },
  );
  fc.assert(
    fc.property(fc.double({ min: -40, max: -6.9, noNaN: true }), (logarithm) => {
      const p = Math.exp(logarithm);
      expect(Math.abs(normalCdf(normalQuantile(p)) / p - 1)).toBeLessThan(3e-11); // what the library's distribution has
    }),
    { numRuns: 5000 },
  );
  expect(normalQuantile(0.001) / -3.0902323061678136 - 1).toBeCloseTo(0, 15); // by arithmetic of 30 digits
  expect(normalQuantile(1e-6) / -4.753424308822899 - 1).toBeCloseTo(0, 15);
  expect(normalQuantile(1e-9) / -5.997807015007687 - 1).toBeCloseTo(0, 15);
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
