import { describe, expect, test } from 'vitest';
import { distanceCoverage, widest, type CoverageInput } from './distance-coverage.testing.ts';

describe('made stops come back within their stated 95 % intervals, 2,000 a rate', () => {
  for (const sensors of ['speed', 'speed and accelerometer'] as const)
    for (const startBy of ['any', 'deceleration-onset'] as const)
      for (const rate of [1, 5, 10, 25, 100] as const) {
        const input: CoverageInput = { rate, startBy, sensors, draws: 2000 };
        test(`at ${rate} Hz, start by ${startBy}, ${sensors}`, () => {
          const { covered, halfWidth, missed } = distanceCoverage(input);
          expect(covered).toBeGreaterThanOrEqual(0.93);
          if (rate >= 10) expect(covered).toBeLessThanOrEqual(0.97);
          expect(halfWidth).toBeLessThanOrEqual(widest(input));
          expect(missed).toBeLessThanOrEqual(0.02 * input.draws);
        });
      }
});
