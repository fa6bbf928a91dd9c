import { describe, expect, test } from 'vitest';
import { distanceCoverage } from './distance-coverage.testing.ts';

describe('made stops come back within their stated 95 % intervals', () => {
  for (const rate of [1, 5, 10, 25, 100]) {
    for (const startBy of ['any', 'deceleration-onset'] as const) {
      test(`at ${rate} Hz, start by ${startBy}`, () => {
        expect(distanceCoverage({ rate, startBy, draws: 400 })).toBeGreaterThanOrEqual(0.9);
      });
    }
  }
});
