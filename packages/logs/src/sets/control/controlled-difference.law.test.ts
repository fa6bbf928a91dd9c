import { randomStream } from '@standstill/numerics';
import { expect, test } from 'vitest';
import { coverage, scattered } from '../coverage.testing.ts';
import { setOf, sixty } from '../set-of.testing.ts';
import { controlledDifference, type ReferencedSets, type RepeatedSets } from './controlled-difference.ts';

const options = { nominalSpeed: sixty, definition: 'application' } as const;
const draws = 2000;
const change = -3;

/** Shares of intervals that held difference and drift. */
function sharesOf(make: () => RepeatedSets | ReferencedSets, drift: number): readonly [number, number] {
  const [ofDifference, ofDrift] = [coverage(), coverage()];
  for (let draw = 0; draw < draws; draw += 1) {
    const found = controlledDifference(make(), options);
    if (!found.ok) throw new Error(found.code);
    ofDifference.add(found.difference, change);
    ofDrift.add(found.drift, drift);
  }
  return [ofDifference.share(), ofDrift.share()];
}

/** Prints the shares and gives those that are too small or too large. */
function outside(name: string, shares: readonly [number, number]): readonly number[] {
  console.log(
    `${name}: 95 % intervals held ${shares.map((share) => (100 * share).toFixed(1)).join(' and ')} %`,
  );
  return shares.filter((share) => share < 0.93 || share > 0.97);
}

const spreads = [
  [1, 1, 1],
  [0.5, 1.5, 1],
  [1.5, 0.5, 0.5],
] as const;

test.each([4, 5, 6, 8])(
  'a repeat in sets of %i takes a drift of 2 m out, and its intervals hold',
  (count) => {
    const stream = randomStream(51, `repeat/${count}`);
    for (const [ofBefore, ofAfter, ofRepeat] of spreads) {
      const block = (spread: number, base: number) => setOf(scattered(count, spread, () => base, stream));
      const make = (): RepeatedSets => ({
        before: block(ofBefore, 45),
        after: block(ofAfter, 46 + change),
        repeat: block(ofRepeat, 47),
      });
      expect(
        outside(`repeat, ${count} runs, spreads ${ofBefore}, ${ofAfter}, ${ofRepeat} m`, sharesOf(make, 2)),
      ).toEqual([]);
    }
  },
);

test('a drift that goes on with every run drops out of the difference, and widens its interval', () => {
  const stream = randomStream(53, 'steady');
  const block = (first: number, base: number) =>
    setOf(scattered(4, 0.5, (run) => base + 0.25 * (first + run), stream));
  const held = coverage();
  let sum = 0;
  for (let draw = 0; draw < draws; draw += 1) {
    const sets = { before: block(0, 45), after: block(4, 45 + change), repeat: block(8, 45) };
    const found = controlledDifference(sets, options);
    if (!found.ok) throw new Error(found.code);
    held.add(found.difference, change);
    sum += found.difference.value;
  }
  console.log(`repeat, steady drift: 95 % intervals held ${(100 * held.share()).toFixed(1)} %`);
  // standard error of the mean of 2000 draws: 0.5 √(1.5/4) / √2000 = 0.007 m
  expect(Math.abs(sum / draws - change)).toBeLessThan(0.025);
  expect(held.share()).toBeGreaterThanOrEqual(0.95);
});

test.each([4, 6, 8])(
  'a reference car in sets of %i takes out what moved both, and its intervals hold',
  (count) => {
    const stream = randomStream(52, `reference/${count}`);
    const set = (spread: number, base: number) => setOf(scattered(count, spread, () => base, stream));
    for (const [ofBefore, ofAfter, ofReference] of spreads) {
      const make = (): ReferencedSets => ({
        before: set(ofBefore, 45),
        after: set(ofAfter, 45 + change + 1.5),
        referenceBefore: set(ofReference, 50),
        referenceAfter: set(ofReference, 51.5),
      });
      expect(
        outside(
          `reference car, ${count} runs, spreads ${ofBefore}, ${ofAfter}, ${ofReference} m`,
          sharesOf(make, 1.5),
        ),
      ).toEqual([]);
    }
  },
);
