import { expect, test } from 'vitest';
import { adjustedCoverage } from './adjusted-coverage.testing.ts';

const counts = [
  [4, 4],
  [5, 7],
  [8, 8],
  [4, 8],
  [8, 4],
] as const;
const spreads = [
  [1, 1],
  [0.5, 1.5],
  [1.5, 0.5],
] as const;

test.each(
  counts.flatMap((ofRuns) =>
    spreads.flatMap((ofSpreads) =>
      [false, true].map((conditions) => ({ counts: ofRuns, spreads: ofSpreads, conditions })),
    ),
  ),
)('adjusted intervals hold: $counts runs, spreads $spreads m, conditions $conditions', (design) => {
  const { line, shares } = adjustedCoverage({ ...design, draws: 2000 });
  console.log(line);
  expect(shares.difference).toBeGreaterThanOrEqual(0.92);
  expect(shares.difference).toBeLessThanOrEqual(0.98);
});
