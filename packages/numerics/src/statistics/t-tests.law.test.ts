import { expect, test } from 'vitest';
import { randomStream } from '../sample/random-stream.ts';
import { bootstrapDifference } from './bootstrap-difference.ts';
import { meanInterval } from './mean-interval.ts';
import { permutationTest } from './permutation-test.ts';
import { summarize } from './summarize.ts';
import { tTestPower } from './t-test-power.ts';
import { welch } from './welch.ts';

const rounds = 4000;
const stream = randomStream(31, 'coverage');

function normals(count: number, center: number, spread: number): number[] {
  return Array.from({ length: count }, () => center + spread * stream.normal());
}

/** Share of rounds in which something holds. */
function share(count: number, holds: () => boolean): number {
  let hits = 0;
  for (let i = 0; i < count; i += 1) if (holds()) hits += 1;
  return hits / count;
}

/** Three standard errors of a share near 0.95. */
const slack = 3 * Math.sqrt((0.95 * 0.05) / rounds);

test('a 95 % interval of a mean holds the mean 95 times in 100', () => {
  const held = share(rounds, () => {
    const { low, high } = meanInterval(summarize(normals(5, 118, 3)));
    return low <= 118 && 118 <= high;
  });
  expect(Math.abs(held - 0.95)).toBeLessThan(slack);
});

test("Welch's 95 % interval holds the difference about 95 times in 100 though spreads and counts differ", () => {
  const held = share(rounds, () => {
    const { low, high } = welch(summarize(normals(6, 120, 1)), summarize(normals(9, 117, 4)));
    return low <= 3 && 3 <= high;
  });
  expect(Math.abs(held - 0.95)).toBeLessThan(slack + 0.005);
});

test('where there is no difference a permutation p under 0.05 comes at most 5 times in 100', () => {
  const rejected = share(
    rounds,
    () => permutationTest(normals(5, 0, 1), normals(5, 0, 1), { seed: 1 }).p <= 0.05,
  );
  expect(rejected).toBeLessThan(0.05 + slack);
  expect(rejected).toBeGreaterThan(0.03);
});

test('power is how often a difference is found', () => {
  const found = share(rounds, () => {
    const first = summarize(normals(8, 1.5, 1));
    return welch(first, summarize(normals(8, 0, 1))).p <= 0.05;
  });
  const power = tTestPower({ difference: 1.5, standardDeviation: 1 }, 8);
  expect(Math.abs(found - power)).toBeLessThan(3 * Math.sqrt((power * (1 - power)) / rounds) + 0.005);
});

test('a bootstrap interval of thirty against thirty holds the difference 93 to 97 times in 100', () => {
  const held = share(600, () => {
    const { low, high } = bootstrapDifference(normals(30, 2, 1), normals(30, 0, 1), {
      seed: stream.below(1e9),
      draws: 800,
    });
    return low <= 2 && 2 <= high;
  });
  expect(held).toBeGreaterThan(0.92);
  expect(held).toBeLessThan(0.975);
});
