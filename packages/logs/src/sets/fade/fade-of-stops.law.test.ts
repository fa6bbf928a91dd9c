import { randomStream } from '@standstill/numerics';
import { expect, test } from 'vitest';
import { coverage, scattered } from '../coverage.testing.ts';
import { setOf, sixty } from '../set-of.testing.ts';
import { fadeOfStops } from './fade-of-stops.ts';
import type { FadeOfStops } from './fade.ts';
import { slopeDifference } from './slope-difference.ts';

const options = { nominalSpeed: sixty, definition: 'application' } as const;

/** The share as it is, printed on the way. */
function told(name: string, share: number): number {
  console.log(`${name}: held ${(100 * share).toFixed(1)} %`);
  return share;
}

test.each([
  [5, 10],
  [6, 6],
  [10, 10],
])('intervals of slopes, growth and their difference hold in sets of %i and %i', (count, other) => {
  const stream = randomStream(71, `fade/${count}/${other}`);
  const faded = (stops: number, spread: number, slope: number): FadeOfStops => {
    const set = setOf(scattered(stops, spread, (run) => 40 + slope * run, stream));
    const found = fadeOfStops(set, options);
    if (!found.ok) throw new Error(found.code);
    return found;
  };
  const [slopes, percents, differences] = [coverage(), coverage(), coverage()];
  let bends = 0;
  for (let draw = 0; draw < 2000; draw += 1) {
    const first = faded(count, 1, 0.8);
    const second = faded(other, 0.5, 0.3);
    slopes.add(first.slope, 0.8);
    percents.add(first.growthPercent, (100 * 0.8 * (count - 1)) / 40.8);
    differences.add(slopeDifference(first, second).difference, -0.5);
    if (first.bends) bends += 1;
  }
  const shares = [
    told(`slope over ${count} stops`, slopes.share()),
    told(`growth in %, ${count} stops`, percents.share()),
    told(`difference of slopes, ${count} and ${other} stops, unlike spreads`, differences.share()),
    told(`no bend where there is none, ${count} stops`, 1 - bends / 2000),
  ];
  for (const share of shares) {
    expect(share).toBeGreaterThanOrEqual(0.93);
    expect(share).toBeLessThanOrEqual(0.97);
  }
});
