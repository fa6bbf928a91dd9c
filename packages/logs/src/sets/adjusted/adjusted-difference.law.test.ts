import { expect, test } from 'vitest';
import { adjustedCoverage } from './adjusted-coverage.testing.ts';

test.each([
  { counts: [4, 4], spreads: [1, 1] },
  { counts: [6, 6], spreads: [0.5, 1.5] },
  { counts: [5, 7], spreads: [1.5, 0.5] },
] as const)('a made trend, warm-up and change are told apart: $counts runs, spreads $spreads m', (design) => {
  const { line, shares } = adjustedCoverage({ ...design, conditions: false, draws: 2000 });
  console.log(line);
  expect(shares.difference).toBeGreaterThanOrEqual(0.93);
  expect(shares.difference).toBeLessThanOrEqual(0.97);
  // unlike spreads make the interval of what both sets share wider than it need be
  for (const share of [shares.runOrder, shares.firstRun]) {
    expect(share).toBeGreaterThanOrEqual(0.93);
    expect(share).toBeLessThanOrEqual(0.99);
  }
});
