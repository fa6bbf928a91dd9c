import { expect, test } from 'vitest';
import { bootstrapDifference } from './bootstrap-difference.ts';
import { quantile } from './quantile.ts';

/** Means of all ways to draw three values from three, with replacement. */
function allMeans([a, b, c]: readonly [number, number, number]): readonly number[] {
  const three = [a, b, c];
  return three.flatMap((x) => three.flatMap((y) => three.map((z) => (x + y + z) / 3)));
}

test('the ends lie where all draws that there are put them', () => {
  const first = [41.3, 44.9, 47.2] as const;
  const second = [38.1, 38.8, 43.7] as const;
  const all = allMeans(first).flatMap((one) => allMeans(second).map((other) => one - other));
  for (const confidence of [0.5, 0.8, 0.95]) {
    const { low, high } = bootstrapDifference(first, second, { seed: 9, draws: 200_000, confidence });
    // between the quantiles a little inside and outside: 200,000 draws leave 0.05 % of error of the share
    for (const [end, share] of [
      [low, (1 - confidence) / 2],
      [high, (1 + confidence) / 2],
    ] as const) {
      expect(end).toBeGreaterThanOrEqual(quantile(all, share - 0.005) - 1e-9);
      expect(end).toBeLessThanOrEqual(quantile(all, share + 0.005) + 1e-9);
    }
  }
});
