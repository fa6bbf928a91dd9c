import { describe, expect, test } from 'vitest';
import { findStops, searchStops } from './find-stops.ts';
import type { FoundStop } from './found-stop.ts';
import { madeDistance, madeRamp, madeSpeed, madeTable, timesAt } from './made-table.testing.ts';

const codes = (stop: FoundStop | undefined): string[] => (stop?.flags ?? []).map(({ code }) => code);
const time = timesAt(50, 12);
const stop8 = time.map(madeSpeed(27, 3, 8));

describe('a stop without noise', () => {
  const [found, ...others] = findStops(madeTable(time, { speed: stop8 }), { nominalSpeed: 26.8224 });

  test('comes back as it was made', () => {
    expect(others).toEqual([]);
    expect(found).toMatchObject({ number: 1, startBy: 'deceleration-onset', clock: null, flags: [] });
    expect(found!.startTime).toBeCloseTo(3, 1);
    expect(found!.entrySpeed).toBeCloseTo(27, 1);
    expect(found!.applicationDistance).toBeCloseTo(madeDistance(27, 8), 0);
    expect(Math.abs(found!.applicationDistance - madeDistance(27, 8))).toBeLessThan(
      1.96 * found!.distanceStandardError,
    );
    expect(found!.duration).toBeCloseTo(27 / 8 + madeRamp / 2, 1);
    expect(found!.buildUpTime).toBeCloseTo(0.9 * madeRamp, 1);
    expect(found!.meanFullyDevelopedDeceleration).toBeCloseTo(8, 3);
    expect(found!.meanDecelerationByDistance).toBeCloseTo(27 ** 2 / 2 / madeDistance(27, 8), 1);
    expect(found!.peakDeceleration).toBeCloseTo(8, 0);
    expect(found!.sampleRate).toBeCloseTo(50, 6);
  });

  test('the speed gate stands at the nominal speed, the correction goes to it', () => {
    const lost = (27 - 26.8224) / 8;
    const until = Math.sqrt(2 * madeRamp * lost);
    const covered = 27 * until - (8 * until ** 3) / (6 * madeRamp);
    expect(found!.gateDistance).toBeCloseTo(madeDistance(27, 8) - covered, 0);
    expect(found!.correctedDistance).toBeCloseTo(
      found!.applicationDistance * (26.8224 / found!.entrySpeed) ** 2,
      9,
    );
  });

  test('the trace begins a second before the start and ends at rest', () => {
    const { trace, startTime, endTime } = found!;
    expect(trace.time[0]).toBeCloseTo(startTime - 1, 1);
    expect(trace.time.at(-1)).toBeCloseTo(endTime, 9);
    expect(trace.speed.at(-1)).toBe(0);
  });
});

describe('where the brake is recorded, the stop starts with it', () => {
  const applied = time.map((t) => (t >= 2.9 ? 1 : 0));
  test.each([
    ['brake-switch', applied, 'brake-switch'],
    ['brake-pressure', time.map((t) => Math.max(0, Math.min(6e6, (t - 2.9) * 3e7))), 'brake-pressure'],
    ['pedal-force', applied.map((on) => 200 * on + 3), 'pedal'],
    ['pedal-travel', applied.map((on) => 0.05 * on), 'pedal'],
  ] as const)('%s', (quantity, values, startBy) => {
    const [found] = findStops(madeTable(time, { speed: stop8, [quantity]: values }));
    expect(found!.startBy).toBe(startBy);
    expect(found!.startTime).toBeCloseTo(2.9, 1);
    expect(found!.applicationDistance).toBeCloseTo(27 * 0.1 + madeDistance(27, 8), 0);
  });

  test('a late speed is moved by its latency', () => {
    const late = time.map((t) => madeSpeed(27, 3, 8)(t - 0.1));
    const table = madeTable(time, { speed: late, 'brake-switch': applied });
    const [found] = findStops(table, { speedLatency: { value: 0.1, standardError: 0.005 } });
    expect(found!.applicationDistance).toBeCloseTo(27 * 0.1 + madeDistance(27, 8), 0);
    expect(found!.startTime).toBeCloseTo(2.9, 1);
  });

  test('a foot that rested on the brake long before does not start the stop', () => {
    const table = madeTable(time, { speed: stop8, 'brake-switch': time.map((t) => (t >= 0.2 ? 1 : 0)) });
    expect(findStops(table)[0]!.startBy).toBe('deceleration-onset');
  });

  test('a switch that bounces starts the stop where it first came on', () => {
    const bouncing = time.map((t) => (t >= 2.9 && !(t > 3 && t < 3.07) && !(t > 3.2 && t < 3.3) ? 1 : 0));
    const [found] = findStops(madeTable(time, { speed: stop8, 'brake-switch': bouncing }));
    expect(found!.startBy).toBe('brake-switch');
    expect(found!.startTime).toBeCloseTo(2.9, 1);
  });

  test('a tap before the stop does not start it', () => {
    const tapped = time.map((t) => (t >= 2.9 || (t > 2 && t < 2.4) ? 1 : 0));
    const [found] = findStops(madeTable(time, { speed: stop8, 'brake-switch': tapped }));
    expect(found!.startTime).toBeCloseTo(2.9, 1);
  });

  test('it can be left aside', () => {
    const table = madeTable(time, { speed: stop8, 'brake-switch': applied });
    expect(findStops(table, { startBy: 'deceleration-onset' })[0]!.startBy).toBe('deceleration-onset');
  });
});

describe('held values', () => {
  const rows = timesAt(10, 12);
  const held = rows.map((_, i) => Math.round(3.6 * madeSpeed(27, 3, 7)(Math.floor(i / 10))) / 3.6);

  test('only real updates are used', () => {
    const [found] = findStops(madeTable(rows, { speed: held }));
    expect(codes(found)).toContain('held-values');
    expect(found!.sampleRate).toBeCloseTo(1, 6);
    expect(found!.applicationDistance).toBeGreaterThan(
      madeDistance(27, 7) - 1.96 * found!.distanceStandardError,
    );
    expect(found!.applicationDistance).toBeLessThan(
      madeDistance(27, 7) + 1.96 * found!.distanceStandardError,
    );
    expect(found!.peakDeceleration).toBeLessThan(8);
  });

  test('coarse steps of a fast record are no holding', () => {
    const coarse = time.map((t) => Math.round(3.6 * madeSpeed(27, 3, 7)(t)) / 3.6);
    const [found] = findStops(madeTable(time, { speed: coarse }));
    expect(codes(found)).not.toContain('held-values');
    const error = Math.abs(found!.applicationDistance - madeDistance(27, 7));
    expect(error).toBeLessThan(1.96 * found!.distanceStandardError);
    expect(found!.distanceStandardError).toBeLessThan(2);
  });
});

describe('no stop is made of damage', () => {
  test.each([
    ['a gap in the middle', (t: number) => (t > 4 && t < 5.2 ? NaN : madeSpeed(27, 3, 8)(t))],
    ['a gap that swallows the start', (t: number) => (t > 2 && t < 4 ? NaN : madeSpeed(27, 3, 8)(t))],
    ['one zero', (t: number) => (Math.abs(t - 5) < 0.01 ? 0 : 27)],
    ['a fall from one sample to the next', (t: number) => (t < 5 ? 27 : 1.3)],
    ['zeros for a second', (t: number) => (t > 5 && t < 6 ? 0 : 27)],
    ['no speed at all', () => NaN],
    ['parking', (t: number) => madeSpeed(4, 3, 3)(t)],
    ['rolling out', (t: number) => Math.max(0, 8 - 0.6 * t)],
  ])('%s', (_, of) => {
    expect(findStops(madeTable(time, { speed: time.map(of) }))).toEqual([]);
  });

  test('what was refused is told', () => {
    const { rejected } = searchStops(madeTable(time, { speed: time.map((t) => (t < 5 ? 27 : 0)) }));
    expect(rejected).toMatchObject([{ code: 'sample-jump' }]);
    const late = searchStops(madeTable(time, { speed: time.map(madeSpeed(27, -0.5, 8)) }));
    expect(late.rejected).toMatchObject([{ code: 'start-not-in-log' }]);
  });

  test('nothing is computed across a seam', () => {
    const table = madeTable(time, { speed: stop8 }, { segmentStarts: [0, 200] });
    expect(findStops(table)).toEqual([]);
  });

  test('a record that wavers at rest ends a stop once', () => {
    const wavering = time.map((t, i) => Math.max(madeSpeed(27, 3, 8)(t), t > 6.2 ? 0.5 + 0.2 * (i % 2) : 0));
    expect(findStops(madeTable(time, { speed: wavering }))).toHaveLength(1);
  });
});

function flagsAt(nominalSpeed: number): FoundStop['flags'] {
  return findStops(madeTable(time, { speed: stop8 }), { nominalSpeed })[0]!.flags;
}

describe('flags', () => {
  test('a traffic stop is left out, unless the person says otherwise', () => {
    const soft = timesAt(50, 25);
    const table = madeTable(soft, { speed: soft.map(madeSpeed(20, 5, 2)) });
    expect(findStops(table)[0]!.flags).toMatchObject([{ code: 'gentle', severity: 'excludes' }]);
    expect(findStops(table, { gentleBelow: 0 })[0]!.flags).toEqual([]);
  });

  test('off the nominal speed', () => {
    expect(flagsAt(28)).toMatchObject([{ code: 'speed-off-nominal', severity: 'excludes' }]);
    expect(flagsAt(23)).toMatchObject([{ code: 'speed-off-nominal', severity: 'excludes' }]);
    expect(flagsAt(25)).toMatchObject([{ code: 'speed-off-nominal', severity: 'warns' }]);
    expect(flagsAt(27)).toEqual([]);
  });

  test('more than tires hold', () => {
    const table = madeTable(time, { speed: time.map(madeSpeed(27, 3, 19)) });
    expect(findStops(table)[0]!.flags[0]).toMatchObject({
      code: 'impossible-deceleration',
      severity: 'excludes',
    });
  });

  test('a low rate, a bridged gap, an assumed scale', () => {
    const slow = timesAt(5, 12);
    expect(codes(findStops(madeTable(slow, { speed: slow.map(madeSpeed(27, 3, 8)) }))[0])).toEqual([
      'low-rate',
    ]);
    const bridged = time.map((t) => (t > 4.5 && t < 4.8 ? NaN : madeSpeed(27, 3, 8)(t)));
    expect(codes(findStops(madeTable(time, { speed: bridged }))[0])).toEqual(['sample-gap']);
    const table = madeTable(time, { speed: stop8 });
    const assumed = {
      ...table,
      channels: table.channels.map((one) => ({ ...one, unitOrigin: 'assumed' as const })),
    };
    expect(codes(findStops(assumed)[0])).toEqual(['scale-assumed']);
  });

  test('wheels that disagree before the brakes bite; slip under braking is none', () => {
    const inAir = [stop8, stop8, stop8.map((v) => v / 2), stop8.map((v) => v / 2)];
    expect(findStops(madeTable(time, { 'wheel-speed': inAir }))[0]!.flags).toMatchObject([
      { code: 'wheels-disagree', severity: 'excludes' },
    ]);
    const slipping = [stop8, stop8, stop8, stop8.map((v, i) => (time[i]! > 3.5 ? v * 0.7 : v))];
    expect(findStops(madeTable(time, { 'wheel-speed': slipping }))[0]!.flags).toEqual([]);
  });

  test('a turn, and a record that ends just before rest', () => {
    const turning = madeTable(time, { speed: stop8, heading: time.map((t) => 6.2 + 0.1 * t) });
    expect(codes(findStops(turning)[0])).toEqual(['not-straight']);
    const short = time.filter((t) => t < 3 + 26 / 8 + madeRamp / 2);
    const [found] = findStops(madeTable(short, { speed: short.map(madeSpeed(27, 3, 8)) }));
    expect(codes(found)).toEqual(['not-to-rest']);
    expect(found!.applicationDistance).toBeCloseTo(madeDistance(27, 8), 0);
  });
});

describe('what a person may say', () => {
  test('impossible options are refused', () => {
    const table = madeTable(time, { speed: stop8 });
    expect(() => findStops(table, { nominalSpeed: -1 })).toThrow('nominal speed');
    expect(() => findStops(table, { grade: 2 })).toThrow('grade');
  });

  test('level ground, and another speed channel', () => {
    const table = madeTable(time, { speed: [stop8, time.map(madeSpeed(27, 3, 6))] });
    const [uphill] = findStops(table, { nominalSpeed: 27, grade: 0.02 });
    expect(uphill!.correctedDistance).toBeCloseTo(madeDistance(27, 8) * (1 + 0.1961 / 7.35), 0);
    expect(findStops(table, { speedChannel: 'speed 2' })[0]!.meanFullyDevelopedDeceleration).toBeCloseTo(
      6,
      2,
    );
    expect(findStops(table, { speedChannel: 'none' })).toEqual([]);
  });
});
