import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compareStopSets, type StopSetComparison } from './compare-stop-sets.ts';
import { setOf, sixty } from './set-of.testing.ts';
import type { IntervalValue, StopCovariates } from './stop-set.ts';

/** m; steps of a centimeter, so that no two sums differ by rounding alone. */
const distances = fc.array(
  fc.integer({ min: 3500, max: 5500 }).map((value) => value / 100),
  { minLength: 3, maxLength: 6 },
);

const fewRuns = { numRuns: 25, seed: 411 } as const;

function compared(
  before: readonly number[],
  after: readonly number[],
  covariates: readonly [readonly StopCovariates[], readonly StopCovariates[]] = [[], []],
): StopSetComparison {
  const found = compareStopSets({
    before: setOf(before, { covariates: covariates[0] }),
    after: setOf(after, { covariates: covariates[1] }),
    nominalSpeed: sixty,
    definition: 'application',
    seed: 5,
  });
  if (!found.ok) throw new Error(found.code);
  return found;
}

function expectMirrored(one: IntervalValue, other: IntervalValue): void {
  expect(one.value).toBeCloseTo(-other.value, 9);
  expect(one.low).toBeCloseTo(-other.high, 9);
  expect(one.high).toBeCloseTo(-other.low, 9);
}

function expectEqual(one: IntervalValue, other: IntervalValue): void {
  expect(one.value).toBeCloseTo(other.value, 8);
  expect(one.low).toBeCloseTo(other.low, 8);
  expect(one.high).toBeCloseTo(other.high, 8);
}

test('swapping the sets changes the signs and nothing else', () => {
  fc.assert(
    fc.property(distances, distances, (before, after) => {
      const one = compared(before, after);
      const other = compared(after, before);
      expectMirrored(one.difference, other.difference);
      if (one.adjusted && other.adjusted) expectMirrored(one.adjusted.difference, other.adjusted.difference);
      expect(one.adjusted === null).toBe(other.adjusted === null);
      expect(one.permutation.p).toBe(other.permutation.p);
      expect(one.welch?.p ?? 0).toBeCloseTo(other.welch?.p ?? 0, 9);
      expect(one.bestOfEach.byLuck).toBeCloseTo(-other.bestOfEach.byLuck, 12);
    }),
    fewRuns,
  );
});

test('a constant added to every distance moves means, best and worst and nothing else', () => {
  fc.assert(
    fc.property(
      distances,
      distances,
      fc.double({ min: -10, max: 10, noNaN: true }),
      (before, after, shift) => {
        const one = compared(before, after);
        const other = compared(
          before.map((value) => value + shift),
          after.map((value) => value + shift),
        );
        expect(other.before.mean.value).toBeCloseTo(one.before.mean.value + shift, 9);
        expect(other.before.best).toBeCloseTo(one.before.best + shift, 9);
        expectEqual(other.difference, one.difference);
        expectEqual(other.bootstrap.difference, one.bootstrap.difference);
        expect(other.permutation.p).toBe(one.permutation.p);
        expect(other.before.standardDeviation).toBeCloseTo(one.before.standardDeviation, 9);
        expectEqual(other.before.trend!, one.before.trend!);
        if (one.adjusted && other.adjusted) expectEqual(other.adjusted.difference, one.adjusted.difference);
      },
    ),
    fewRuns,
  );
});

test('the permutation is what trying all by brute force gives', () => {
  fc.assert(
    fc.property(distances, distances, (before, after) => {
      const { permutation } = compared(before, after);
      expect(permutation.exact).toBe(true);
      // in whole centimeters, so that ties are ties: the difference of means times both counts
      const pool = [...before, ...after].map((value) => Math.round(100 * value));
      const total = pool.reduce((sum, value) => sum + value, 0);
      const apart = (inBefore: (place: number) => boolean): number => {
        const sum = pool.reduce((part, value, place) => (inBefore(place) ? part + value : part), 0);
        return Math.abs(sum * after.length - (total - sum) * before.length);
      };
      const observed = apart((place) => place < before.length);
      let [hits, ways] = [0, 0];
      for (let mask = 0; mask < 2 ** pool.length; mask += 1) {
        const picked = pool.filter((_, place) => (mask >> place) & 1).length;
        if (picked !== before.length) continue;
        ways += 1;
        if (apart((place) => ((mask >> place) & 1) === 1) >= observed) hits += 1;
      }
      expect(permutation.arrangements).toBe(ways);
      expect(permutation.p).toBeCloseTo(hits / ways, 12);
    }),
    fewRuns,
  );
});

test('a condition that was the same at all stops changes nothing', () => {
  fc.assert(
    fc.property(
      distances,
      distances,
      fc.double({ min: -20, max: 60, noNaN: true }),
      (before, after, value) => {
        const constant = (set: readonly number[]): readonly StopCovariates[] =>
          set.map(() => ({ surfaceTemperature: value }));
        const plain = compared(before, after);
        const other = compared(before, after, [constant(before), constant(after)]);
        expect(other.adjusted).toEqual(plain.adjusted);
        expect(other.notAdjusted).toEqual([
          ...plain.notAdjusted,
          { name: 'surfaceTemperature', why: 'constant', movesWith: [] },
        ]);
      },
    ),
    fewRuns,
  );
});

test('a condition that changed only when the set-up did is named and left out', () => {
  fc.assert(
    fc.property(distances, distances, (before, after) => {
      const plain = compared(before, after);
      const other = compared(before, after, [
        before.map(() => ({ tireTemperature: 20 })),
        after.map(() => ({ tireTemperature: 35 })),
      ]);
      expect(other.adjusted).toEqual(plain.adjusted);
      expect(other.notAdjusted).toContainEqual({
        name: 'tireTemperature',
        why: 'moves-with-change',
        movesWith: ['change'],
      });
    }),
    fewRuns,
  );
});
