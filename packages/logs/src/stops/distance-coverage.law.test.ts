import { describe, expect, test } from 'vitest';
import { distanceCoverage, widest, type CoverageInput } from './distance-coverage.testing.ts';

/** Three standard deviations of a share of 95 % among so many draws: what chance alone may do. */
const allowance = (draws: number): number => 3 * Math.sqrt((0.05 * 0.95) / draws);

const cases: readonly CoverageInput[] = (['any', 'deceleration-onset'] as const).flatMap((startBy) => [
  ...([1, 5, 10, 25, 100] as const).map((rate): CoverageInput => ({
    rate,
    startBy,
    sensors: 'speed',
    draws: 150,
  })),
  ...([1, 10, 100] as const).map((rate): CoverageInput => ({
    rate,
    startBy,
    sensors: 'speed and accelerometer',
    draws: 60,
  })),
]);

describe('made stops come back within their stated 95 % intervals', () => {
  test.each(cases)('at $rate Hz, start by $startBy, $sensors', (input) => {
    const { covered, halfWidth, missed } = distanceCoverage(input);
    expect(covered).toBeGreaterThanOrEqual(0.93 - allowance(input.draws));
    if (input.rate >= 10) expect(covered).toBeLessThanOrEqual(0.97 + allowance(input.draws));
    expect(halfWidth).toBeLessThanOrEqual(widest(input));
    expect(missed).toBeLessThanOrEqual(0.03 * input.draws);
  });
});
