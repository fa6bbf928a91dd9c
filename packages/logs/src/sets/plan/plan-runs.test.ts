import { randomStream, summarize, welch } from '@standstill/numerics';
import { describe, expect, test } from 'vitest';
import { planRuns } from './plan-runs.ts';
import { runOrder } from './run-order.ts';

const assumed = { origin: 'assumed', standardDeviation: 1 } as const;

describe('planRuns', () => {
  test('what so many runs show is no more than what is asked, and fewer would not', () => {
    const plan = planRuns({ resolution: 1.5, spread: assumed });
    // 8.06 by t, rounded up to an even number
    expect(plan).toMatchObject({
      runsPerSet: 10,
      spreadOrigin: 'assumed',
      runsPerSetRange: { low: 10, high: 10 },
    });
    expect(plan.shows!).toBeLessThan(1.5);
    expect(planRuns({ resolution: plan.shows!, spread: assumed }).runsPerSet).toBe(10);
  });

  test('such sets do show it that often', () => {
    const { runsPerSet, shows } = planRuns({ resolution: 1.5, spread: assumed });
    const stream = randomStream(81, 'plan');
    const set = (mean: number) =>
      summarize(Array.from({ length: runsPerSet! }, () => mean + stream.normal()));
    let seen = 0;
    for (let draw = 0; draw < 2000; draw += 1) if (welch(set(40 + shows!), set(40)).p < 0.05) seen += 1;
    expect(seen / 2000).toBeGreaterThan(0.77);
    expect(seen / 2000).toBeLessThan(0.83);
  });

  test('a spread from four stops leaves the number wide open', () => {
    const measured = { origin: 'measured', standardDeviation: 1, degreesOfFreedom: 3 } as const;
    const plan = planRuns({ resolution: 1.5, spread: measured });
    expect(plan.spreadInterval.low).toBeCloseTo(Math.sqrt(3 / 9.348404), 6);
    expect(plan.runsPerSetRange.low).toBe(4);
    expect(plan.runsPerSetRange.high).toBeGreaterThan(90);
  });

  test('a repeat takes fewer runs in each set, a reference car more', () => {
    const by = (control: 'none' | 'repeat' | 'reference-car') =>
      planRuns({ resolution: 0.8, spread: assumed, control }).runsPerSet!;
    expect(by('repeat')).toBeLessThan(by('none'));
    expect(by('reference-car')).toBeGreaterThan(by('none'));
  });

  test('four runs at least, and none where nobody drives so many', () => {
    expect(planRuns({ resolution: 10, spread: assumed }).runsPerSet).toBe(4);
    expect(planRuns({ resolution: 1e-4, spread: assumed })).toMatchObject({ runsPerSet: null, shows: null });
    expect(() => planRuns({ resolution: 0, spread: assumed })).toThrow('difference');
  });
});

describe('runOrder', () => {
  const runs = runOrder({ runsPerSet: 5, warmUps: 1, withRepeat: true });

  test('old, new, old, each with its warm-up first', () => {
    expect(runs).toHaveLength(21);
    expect(runs.map(({ order }) => order)).toEqual(Array.from({ length: 21 }, (_, index) => index + 1));
    expect([...new Set(runs.map(({ set }) => set))]).toEqual(['before', 'after', 'repeat']);
    expect(runs.filter(({ purpose }) => purpose === 'warm-up').map(({ order }) => order)).toEqual([1, 8, 15]);
  });

  test('out and back in turn within each block, as many out as back', () => {
    for (const set of ['before', 'after', 'repeat']) {
      const block = runs.filter((run) => run.set === set);
      const counted = block.filter(({ purpose }) => purpose === 'counted');
      expect(counted.filter(({ direction }) => direction === 'out')).toHaveLength(3);
      expect(counted).toHaveLength(6);
      block.slice(1).forEach(({ direction }, index) => expect(direction).not.toBe(block[index]!.direction));
    }
  });

  test('without a repeat there are two blocks', () => {
    expect(runOrder({ runsPerSet: 4, withRepeat: false })).toHaveLength(12);
    expect(() => runOrder({ runsPerSet: 0, withRepeat: false })).toThrow('runs in each set');
  });
});
