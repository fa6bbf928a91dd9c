import { summarize, welch } from '@standstill/numerics';
import { describe, expect, test } from 'vitest';
import { countedDistances } from '../counted-distances.ts';
import { setOf, sixty } from '../set-of.testing.ts';
import type { StopCovariates } from '../stop-set.ts';
import { adjustedDifference } from './adjusted-difference.ts';
import type { Adjustment } from './adjustment.ts';

const adjust = (
  before: readonly number[],
  after: readonly number[],
  covariates: readonly [readonly StopCovariates[], readonly StopCovariates[]] = [[], []],
): Adjustment => {
  const [first, second] = [before, after].map((distances, set) =>
    countedDistances(setOf(distances, { covariates: covariates[set]! }), 'application', sixty),
  );
  return adjustedDifference(first!, second!);
};

const alternating = [0.1, -0.1, 0.05, -0.05, 0.1, -0.1];

describe('adjustedDifference', () => {
  test('a trend that would pass for scatter is taken out', () => {
    const before = alternating.map((away, index) => 45 + 0.8 * index + away);
    const after = alternating.map((away, index) => 44.5 + 0.8 * index - away);
    const { adjusted } = adjust(before, after);
    const plain = welch(summarize(after), summarize(before));
    expect(plain.low < 0 && plain.high > 0).toBe(true);
    expect(adjusted!.difference.value).toBeCloseTo(-0.5, 9);
    expect(adjusted!.difference.high).toBeLessThan(-0.2);
    expect(adjusted).toMatchObject({ slope: 'common', slopeReason: 'alike', atRun: null });
    expect(adjusted!.takenOut.map(({ name }) => name)).toEqual(['run-order', 'first-run']);
  });

  test('two slopes where they surely differ, and the difference at the run where one slope has it too', () => {
    const before = alternating.map((away, index) => 45 + 1.5 * index + away);
    const after = alternating.map((away) => 44 + away);
    const { adjusted } = adjust(before, after);
    expect(adjusted).toMatchObject({ slope: 'separate', slopeReason: 'differ', atRun: 3.5 });
    expect(adjusted!.difference.value).toBeCloseTo(44 - (45 + 1.5 * 2.5), 1);
    expect(adjusted!.takenOut.map(({ name }) => name)).toEqual([
      'run-order-before',
      'run-order-after',
      'first-run',
    ]);
  });

  test('three against three carry the run order and nothing more', () => {
    const out = { direction: 1 };
    const back = { direction: -1 };
    const { adjusted, notAdjusted } = adjust(
      [45, 45.4, 46.1],
      [43, 43.2, 44.1],
      [
        [out, back, out],
        [back, out, out],
      ],
    );
    expect(adjusted!.takenOut.map(({ name }) => name)).toEqual(['run-order']);
    expect(adjusted).toMatchObject({ slope: 'common', slopeReason: 'too-few-stops' });
    expect(notAdjusted).toEqual([
      { name: 'first-run', why: 'too-few-stops', movesWith: [] },
      { name: 'direction', why: 'too-few-stops', movesWith: [] },
    ]);
  });

  test('two against two carry nothing', () => {
    expect(adjust([45, 46], [43, 44])).toEqual({
      adjusted: null,
      notAdjusted: [
        { name: 'run-order', why: 'too-few-stops', movesWith: [] },
        { name: 'first-run', why: 'too-few-stops', movesWith: [] },
      ],
    });
  });

  test('directions are told as out over back, and a condition that copies another is named with it', () => {
    const ways = [1, -1, 1, -1, 1, -1];
    const covariates = ways.map((direction) => ({ direction, headWind: 3 * direction + 0.001 }));
    const noise = [0.02, 0.01, -0.03, 0.02, 0.01, -0.03];
    const before = ways.map((way, index) => 45 + 0.4 * way + noise[index]!);
    const after = ways.map((way, index) => 43 + 0.4 * way - noise[index]!);
    const { adjusted, notAdjusted } = adjust(before, after, [covariates, covariates]);
    const direction = adjusted!.takenOut.find(({ name }) => name === 'direction')!;
    expect(direction.unit).toBe('m');
    expect(direction.effect.value).toBeCloseTo(0.8, 1);
    expect(notAdjusted).toEqual([{ name: 'headWind', why: 'moves-with-others', movesWith: ['direction'] }]);
  });

  test('what was written down of some stops only is said', () => {
    const { notAdjusted } = adjust(
      [45, 45.4, 46.1, 45],
      [43, 43.2, 44.1, 43],
      [
        [{ headWind: 2 }, {}, {}, {}],
        [{}, {}, {}, {}],
      ],
    );
    expect(notAdjusted).toContainEqual({ name: 'headWind', why: 'not-recorded', movesWith: [] });
  });

  test('no scatter at all gives an interval of no width', () => {
    const { adjusted } = adjust([45, 46, 47, 48], [43, 44, 45, 46]);
    expect(adjusted!.difference.low).toBeCloseTo(-2, 9);
    expect(adjusted!.difference.high).toBeCloseTo(-2, 9);
  });
});
