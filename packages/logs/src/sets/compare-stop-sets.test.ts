import { describe, expect, test } from 'vitest';
import type { FoundStop, StopFlag } from '../stops/found-stop.ts';
import { compareStopSets, type CompareInput, type StopSetComparison } from './compare-stop-sets.ts';

function stop(distance: number, flags: readonly StopFlag[] = []): FoundStop {
  return {
    number: 1,
    startTime: 0,
    endTime: 3,
    clock: null,
    startBy: 'brake-switch',
    entrySpeed: 26.8224,
    applicationDistance: distance,
    distanceStandardError: 0.3,
    startDelayError: 0,
    gateDistance: distance - 1,
    correctedDistance: distance,
    duration: 3,
    meanDecelerationByDistance: 8,
    meanDecelerationByTime: 8,
    meanFullyDevelopedDeceleration: 8,
    peakDeceleration: 9,
    buildUpTime: 0.3,
    sampleRate: 10,
    flags,
    temperatures: [],
    developedPressure: null,
    developedPedalForce: null,
    heading: null,
    trace: {
      time: new Float64Array(0),
      speed: new Float64Array(0),
      speedStandardError: new Float64Array(0),
      deceleration: new Float64Array(0),
    },
  };
}

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
    expect(flat).toMatchObject({ welch: null, difference: { value: 0, low: 0, high: 0 } });
    expect(flat.runsNeeded.runsPerSet).toBeNull();
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
});
