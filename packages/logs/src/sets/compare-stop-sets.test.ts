import { summarize, welch } from '@standstill/numerics';
import { describe, expect, test } from 'vitest';
import type { StopFlag } from '../stops/found-stop.ts';
import { compareStopSets, type CompareInput, type StopSetComparison } from './compare-stop-sets.ts';
import { madeStop } from './set-of.testing.ts';

const stop = (distance: number, flags: readonly StopFlag[] = []): ReturnType<typeof madeStop> =>
  madeStop(distance, 1, { flags });

const input = (
  before: readonly number[],
  after: readonly number[],
  more: Partial<CompareInput> = {},
): CompareInput => ({
  before: { name: 'as found', stops: before.map((distance) => stop(distance)) },
  after: { name: 'new kit', stops: after.map((distance) => stop(distance)) },
  nominalSpeed: 26.8224,
  definition: 'application',
  seed: 1,
  ...more,
});

function compared(...args: Parameters<typeof input>): StopSetComparison {
  const found = compareStopSets(input(...args));
  if (!found.ok) throw new Error(found.code);
  return found;
}

describe('compareStopSets', () => {
  const result = compared([44, 45, 46, 45], [41, 42, 43, 42], { confounders: ['other day'] });

  test('sets', () => {
    expect(result.before).toMatchObject({ best: 44, worst: 46, distances: [44, 45, 46, 45], leftOut: [] });
    expect(result.before.mean.value).toBe(45);
    expect(result.before.standardDeviation).toBeCloseTo(0.816497, 6);
    // t(0.975, 3) = 3.182446: 45 ± 3.182446 × 0.816497 / 2
    expect(result.before.mean.high).toBeCloseTo(46.299228, 5);
    expect(result.before.trend!.value).toBeCloseTo(0.4, 9);
    expect(result.before.measuringError).toBeCloseTo(0.3, 12);
  });

  test('difference, with what chance gives', () => {
    expect(result.difference.value).toBeCloseTo(-3, 12);
    expect(result.welch!.degreesOfFreedom).toBeCloseTo(6, 9);
    // t(0.975, 6) = 2.446912, standard error 0.577350
    expect(result.difference.low).toBeCloseTo(-3 - 2.446912 * 0.57735, 4);
    expect(result.differencePercent.value).toBeCloseTo(-100 / 15, 9);
    // 2 of the 70 arrangements are as far apart
    expect(result.permutation).toEqual({ p: 2 / 70, arrangements: 70, exact: true });
    expect(result.bestOfEach.difference).toBe(-3);
    // the mean of the least of four standard normal numbers is -1.029375
    expect(result.bestOfEach.expectedGainBefore).toBeCloseTo(1.029375 * 0.816497, 4);
    expect(result.runsNeeded).toMatchObject({ difference: 3, runsPerSet: 4 });
    expect(result.confounders).toEqual(['other day']);
  });

  test('a wanted difference asks for its own number of runs', () => {
    const { runsNeeded } = compared([44, 45, 46, 45], [41, 42, 43, 42], { wantedDifference: 0.5 });
    expect(runsNeeded.difference).toBe(0.5);
    expect(runsNeeded.runsPerSet).toBeGreaterThan(40);
  });

  test('the gate is its own definition', () => {
    const gate = compared([44, 45], [41, 42], { definition: 'gate' });
    expect(gate.before.distances).toEqual([43, 44]);
    expect(gate.before.trend).toBeNull();
  });

  test('an unknown delay widens each mean, and the difference only between two loggers', () => {
    const late = (distances: readonly number[]) =>
      distances.map((distance) => ({ ...stop(distance), startDelayError: 0.05, distanceStandardError: 1.4 }));
    const before = { name: 'as found', stops: late([44, 45, 46, 45]) };
    const after = { name: 'new kit', stops: late([41, 42, 43, 42]) };
    const by = (sameLogger: boolean): StopSetComparison => {
      const found = compareStopSets(input([], [], { before, after, sameLogger }));
      if (!found.ok) throw new Error(found.code);
      return found;
    };
    const one = by(true);
    expect(one.before.sharedError).toBeCloseTo(0.05 * 26.8224, 9);
    expect(one.before.mean.high - 45).toBeCloseTo(Math.hypot(1.299228, 1.959964 * 0.05 * 26.8224), 5);
    expect(one.before.measuringError).toBeCloseTo(Math.sqrt(1.4 ** 2 - (0.05 * 26.8224) ** 2), 9);
    expect(one.difference).toEqual(result.difference);
    const two = by(false);
    const half = Math.hypot(2.446912 * 0.57735, 1.959964 * Math.SQRT2 * 0.05 * 26.8224);
    expect(two.difference.high - two.difference.value).toBeCloseTo(half, 4);
    expect(two.differencePercent.high).toBeGreaterThan(one.differencePercent.high + 4);
    expect(two.permutation).toEqual(one.permutation);
  });

  test('where one side tells its start by the speed itself, one delay is left in the difference', () => {
    const after = {
      name: 'new kit',
      stops: [41, 42, 43, 42].map((distance) => ({
        ...stop(distance),
        startDelayError: 0.05,
        distanceStandardError: 1.4,
      })),
    };
    const found = compareStopSets(input([44, 45, 46, 45], [], { after }));
    const half = Math.hypot(2.446912 * 0.57735, 1.959964 * 0.05 * 26.8224);
    expect(found.ok && found.difference.high - found.difference.value).toBeCloseTo(half, 4);
  });

  test('the gate knows of no brake signal and of no delay', () => {
    const stops = [44, 45].map((distance) => ({
      ...stop(distance),
      startDelayError: 0.05,
      distanceStandardError: 1.4,
    }));
    const found = compareStopSets(input([], [41, 42], { before: { name: 'a', stops }, definition: 'gate' }));
    expect(found.ok && found.before.sharedError).toBe(0);
  });

  test('no spread at all', () => {
    const flat = compared([44, 44], [44, 44]);
    expect(flat).toMatchObject({ welch: null, difference: { value: 0 } });
    expect(flat.runsNeeded.runsPerSet).toBeNull();
  });

  test('stops too alike to be true are no surer than each could be measured', () => {
    const alike = compared([40, 40], [39.9, 39.9]);
    const reach = 1.96 * Math.hypot(0.3 / Math.sqrt(2), 0.3 / Math.sqrt(2));
    expect(alike.difference.low).toBeCloseTo(-0.1 - reach, 3);
    expect(alike.difference.high).toBeCloseTo(-0.1 + reach, 3);
    expect(alike.differencePercent.high).toBeGreaterThan(0);
    expect(alike.before.mean.high).toBeCloseTo(40 + (1.96 * 0.3) / Math.sqrt(2), 3);
    const one = compared([40, 40.2, 39.9, 40.1], [39, 39, 39, 39]);
    const plain = welch(summarize([39, 39, 39, 39]), summarize([40, 40.2, 39.9, 40.1]));
    expect(one.difference.high - one.difference.value).toBeCloseTo(
      Math.hypot(plain.high - plain.difference, (1.96 * 0.3) / 2),
      3,
    );
  });

  test('an excluded stop does not count, and too few are refused', () => {
    const excluded = stop(30, [{ code: 'gentle', severity: 'excludes', reason: 'Too soft.' }]);
    const before = { name: 'a', stops: [stop(44), excluded, stop(45)] };
    const found = compareStopSets(input([], [41, 42], { before }));
    expect(found).toMatchObject({
      ok: true,
      before: { distances: [44, 45], leftOut: [{ reason: 'Too soft.' }] },
    });
    const few = compareStopSets(input([], [41, 42], { before: { name: 'a', stops: [stop(44), excluded] } }));
    expect(few).toMatchObject({ ok: false, code: 'set-too-small', set: 'before', counted: 1 });
  });

  test('an uncorrected distance is corrected to the nominal speed', () => {
    const raw = { ...stop(44), correctedDistance: null, entrySpeed: 27.5 };
    const before = { name: 'a', stops: [raw, raw] };
    const found = compareStopSets(input([], [41, 42], { before }));
    expect(found.ok && found.before.mean.value).toBeCloseTo(44 * (26.8224 / 27.5) ** 2, 9);
  });

  test('the first run against the line through the others', () => {
    const { before, after } = compared([47, 45, 45.5, 46, 46.5], [41, 42, 43, 42]);
    // the others rise by 0.5 a run, so that the line is at 44.5 for the first
    expect(before.warmUp!.value).toBeCloseTo(2.5, 9);
    expect(before.warmUp!.low).toBeCloseTo(2.5, 9);
    // 42, 43, 42 lie level, at 42.33; s = 1/√1.5, t(0.975, 1) = 12.706205, s_w = s √(1 + 1/3 + 4/2)
    expect(after.warmUp!.value).toBeCloseTo(41 - 127 / 3, 9);
    expect(after.warmUp!.high - after.warmUp!.value).toBeCloseTo(
      12.706205 * Math.sqrt((1 + 1 / 3 + 2) / 1.5),
      4,
    );
    expect(compared([47, 45, 45.5], [41, 42]).before.warmUp).toBeNull();
  });

  test('the spread of four runs may be more than half as small or three times as large', () => {
    // χ²(0.975, 3) = 9.348404, χ²(0.025, 3) = 0.215795
    const { standardDeviation: spread, standardDeviationInterval: interval } = result.before;
    expect(interval.low / spread).toBeCloseTo(Math.sqrt(3 / 9.348404), 6);
    expect(interval.high / spread).toBeCloseTo(Math.sqrt(3 / 0.215795), 4);
  });

  test('the bootstrap says that it is too narrow for small sets', () => {
    const { bootstrap, difference } = result;
    expect(bootstrap).toMatchObject({ draws: 10_000, tooNarrow: true });
    expect(bootstrap.difference.value).toBeCloseTo(-3, 12);
    expect(bootstrap.difference.high - bootstrap.difference.low).toBeLessThan(
      difference.high - difference.low,
    );
    const ten = Array.from({ length: 10 }, (_, index) => 44 + (index % 3));
    expect(compared(ten, ten).bootstrap.tooNarrow).toBe(false);
  });

  test('what best of each gains by luck, and where such gains lie', () => {
    const { bestOfEach } = compared([44, 45, 46, 45, 43, 47], [41, 42, 43, 42]);
    expect(bestOfEach.byLuck).toBeCloseTo(bestOfEach.expectedGainBefore - bestOfEach.expectedGainAfter, 12);
    expect(bestOfEach.gainIntervalAfter.low).toBeLessThan(bestOfEach.expectedGainAfter);
    expect(bestOfEach.gainIntervalAfter.high).toBeGreaterThan(bestOfEach.expectedGainAfter);
  });

  test('a rejected stop stays out with its reason, and a restored one counts', () => {
    const soft: StopFlag = { code: 'speed-off-nominal', severity: 'excludes', reason: 'Too slow.' };
    const spun: StopFlag = {
      code: 'wheels-disagree',
      severity: 'excludes',
      reason: 'A wheel was in the air.',
    };
    const before = {
      name: 'a',
      stops: [stop(44), stop(60), stop(46, [soft]), stop(20, [spun]), stop(45)],
      judgements: [
        undefined,
        { verdict: 'rejected', reason: 'The driver let go.' },
        { verdict: 'restored', reason: 'The limit is 3 %.' },
        { verdict: 'restored', reason: 'Looks fine.' },
        null,
      ],
    } as const;
    const found = compareStopSets(input([], [41, 42], { before }));
    if (!found.ok) throw new Error(found.code);
    expect(found.before).toMatchObject({ distances: [44, 46, 45], runs: [1, 3, 5] });
    expect(found.before.leftOut).toEqual([
      { index: 1, number: 1, reason: 'The driver let go.' },
      {
        index: 3,
        number: 1,
        reason:
          "A wheel was in the air. It can't be restored by hand, because the recorded speed is not the car's.",
      },
    ]);
    expect(found.before.judged.map(({ index, verdict, counted }) => [index, verdict, counted])).toEqual([
      [1, 'rejected', false],
      [2, 'restored', true],
      [3, 'restored', false],
    ]);
  });

  test('a gentle stop in traffic is no run; another that does not count keeps its number', () => {
    const flagOf = (code: 'gentle' | 'sample-gap'): StopFlag => ({
      code,
      severity: 'excludes',
      reason: 'No.',
    });
    const before = {
      name: 'a',
      stops: [stop(44), stop(90, [flagOf('gentle')]), stop(50, [flagOf('sample-gap')]), stop(45), stop(46)],
    };
    const found = compareStopSets(input([], [41, 42], { before }));
    expect(found.ok && found.before.runs).toEqual([1, 3, 4]);
  });
});
