import { expect, test } from 'vitest';
import { randomStream } from '../sample/random-stream.ts';
import { bestOfGain } from './best-of-gain.ts';
import { contrastOfMeans } from './contrast-of-means.ts';
import { differenceShown } from './difference-shown.ts';
import { runsNeeded } from './runs-needed.ts';
import { spreadInterval } from './spread-interval.ts';
import { standardDeviation } from './standard-deviation.ts';
import { summarize } from './summarize.ts';
import { tTestPower } from './t-test-power.ts';
import { welch } from './welch.ts';

const first = summarize([30.02, 29.99, 30.11, 29.97, 30.01, 29.99]);
const second = summarize([29.89, 29.93, 29.72, 29.98, 30.02]);

test('two means with weights 1 and -1 are Welch', () => {
  const contrast = contrastOfMeans([
    { ...first, weight: 1 },
    { ...second, weight: -1 },
  ]);
  const expected = welch(first, second);
  expect(contrast.t).toBeCloseTo(expected.t, 12);
  expect(contrast.degreesOfFreedom).toBeCloseTo(expected.degreesOfFreedom, 10);
  expect(contrast.low).toBeCloseTo(expected.low, 12);
});

test('a set with weight zero changes nothing, and a set alone is the interval of its mean', () => {
  const pair = [
    { ...first, weight: 1 },
    { ...second, weight: -1 },
  ];
  const more = contrastOfMeans([...pair, { count: 3, mean: 7, standardDeviation: 9, weight: 0 }]);
  expect(more).toEqual(contrastOfMeans(pair));
  const alone = contrastOfMeans([{ ...first, weight: 2 }]);
  expect(alone.difference).toBeCloseTo(2 * first.mean, 12);
  expect(alone.degreesOfFreedom).toBeCloseTo(5, 12);
});

test('no spread, no sets, one value', () => {
  const flat = { count: 4, mean: 3, standardDeviation: 0, weight: 1 };
  expect(contrastOfMeans([flat, { ...flat, weight: -1 }])).toMatchObject({
    difference: 0,
    degreesOfFreedom: 6,
  });
  expect(() => contrastOfMeans([])).toThrow('number of sets');
  expect(() => contrastOfMeans([{ ...flat, count: 1 }])).toThrow('number of values');
});

test('the interval of a spread holds as often as it says', () => {
  const stream = randomStream(21, 'spread');
  for (const count of [3, 8]) {
    let held = 0;
    for (let draw = 0; draw < 4000; draw += 1) {
      const spread = standardDeviation(Array.from({ length: count }, () => 2 * stream.normal()));
      const { low, high } = spreadInterval({ standardDeviation: spread, degreesOfFreedom: count - 1 });
      if (low <= 2 && 2 <= high) held += 1;
    }
    expect(Math.abs(held / 4000 - 0.95)).toBeLessThan(0.012);
  }
  expect(() => spreadInterval({ standardDeviation: 1, degreesOfFreedom: 0 })).toThrow('degrees of freedom');
});

test('95 of 100 best ones lie where it says, and their mean over one try is the gain', () => {
  const stream = randomStream(22, 'best');
  const { gain, low, high } = bestOfGain(6);
  let [inside, sum] = [0, 0];
  for (let draw = 0; draw < 20_000; draw += 1) {
    const best = Math.max(...Array.from({ length: 6 }, () => stream.normal()));
    if (low <= best && best <= high) inside += 1;
    sum += best - stream.normal();
  }
  expect(Math.abs(inside / 20_000 - 0.95)).toBeLessThan(0.006);
  expect(Math.abs(sum / 20_000 - gain)).toBeLessThan(0.03);
  expect(bestOfGain(1).low).toBeCloseTo(-1.959964, 6);
});

test('what so many runs show needs so many runs', () => {
  for (const count of [4, 9, 30]) {
    const difference = differenceShown({ standardDeviation: 2.5 }, count);
    expect(runsNeeded({ difference, standardDeviation: 2.5 }).exact).toBeCloseTo(count, 5);
  }
  expect(differenceShown({ standardDeviation: 1 }, 1e6)).toBeLessThan(0.004);
});

test('a mean against two has the power that draws show', () => {
  const design = { sets: 3, squaredWeights: 1.5 };
  const stream = randomStream(23, 'power');
  const set = (mean: number) => summarize(Array.from({ length: 5 }, () => mean + stream.normal()));
  let seen = 0;
  for (let draw = 0; draw < 4000; draw += 1) {
    const samples = [
      { ...set(1.5), weight: 1 },
      { ...set(0), weight: -0.5 },
      { ...set(0), weight: -0.5 },
    ];
    if (contrastOfMeans(samples).p < 0.05) seen += 1;
  }
  // Welch knows less of the spreads than the plan, which takes them as equal: a little less power
  const planned = tTestPower({ difference: 1.5, standardDeviation: 1, design }, 5);
  expect(planned - seen / 4000).toBeGreaterThan(-0.015);
  expect(planned - seen / 4000).toBeLessThan(0.06);
});
