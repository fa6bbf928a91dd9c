import { describe, expect, it } from 'vitest';
import { fadeRefusal, fadeReport } from '../../results/fade-report.ts';
import type { FadeReport } from '../../results/fade-report.ts';
import { exampleJobText } from '../../job/example-job.testing.ts';
import { readJob } from '../../job/reading/read-job.ts';
import type { LogReport } from '../../results/log-report.ts';
import { distanceOf, logOf } from '../log.testing.ts';
import type { InventedStop } from '../log.testing.ts';
import { madeRun } from '../made-run.testing.ts';
import { reportLog } from '../report-log.ts';
import type { RunSet } from '../sets/run-set.ts';
import { expectFade } from './expect-fade.ts';
import { reportFade } from './report-fade.ts';
import type { ReportFadeInput } from './report-fade.ts';

function reportOf(name: string, stops: readonly InventedStop[]): LogReport {
  const report = reportLog({ name, content: logOf(stops) }, { nominalSpeed: 30 });
  if (report.kind !== 'log-report') throw new Error(report.sentence);
  return report;
}

const scatter = [0.01, -0.02, 0.015, -0.01, 0.02, -0.015, 0, 0.005];
/** Eight stops, each weaker than the one before and hotter at the start. */
const fading = scatter.map((part, run): InventedStop => ({
  deceleration: 8 - 0.15 * run + part,
  rotor: 90 + 45 * run,
}));
const steady = scatter.map((part): InventedStop => ({ deceleration: 8 + part }));

function set(name: string, ...reports: readonly LogReport[]): RunSet {
  return { name, reports };
}

function faded(input: ReportFadeInput): FadeReport {
  const report = reportFade(input);
  if (report.kind !== 'fade-report') throw new Error(report.sentence);
  expect(fadeReport.parse(JSON.parse(JSON.stringify(report)))).toEqual(report);
  return report;
}

const hot = set('as found', reportOf('hot.csv', fading));

describe('a fade report', () => {
  const report = faded({ set: hot });

  it('says how much longer the stops get, and how hot the brakes were', () => {
    const truth =
      distanceOf(fading[7] ?? { deceleration: NaN }) - distanceOf(fading[0] ?? { deceleration: NaN });
    const { growth_m, slope_m_per_stop, stops, temperatures } = report.set;
    expect(growth_m?.low).toBeLessThan(truth);
    expect(growth_m?.high).toBeGreaterThan(truth - 0.5);
    expect(slope_m_per_stop?.low).toBeGreaterThan(0);
    expect(stops.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    expect(stops[0]?.restedFor_s).toBeNull();
    expect(stops[1]?.restedFor_s).toBeGreaterThan(9);
    expect(temperatures).toHaveLength(1);
    expect(temperatures[0]).toMatchObject({ first_C: 90, highest_C: 405 });
    expect(temperatures[0]?.slope_C_per_stop?.value).toBeCloseTo(45, 6);
    expect(temperatures[0]?.distance_m_per_100K?.low).toBeGreaterThan(0);
    expect(report.sentence).toMatch(
      /^From 67\.1 mph, the stops get longer: over 8 stops the last is \d+(?:\.\d)? to \d+(?:\.\d)? ft longer than the first, with "front rotor temperature \(°C\)" going from 194 °F to 761 °F at the start of a stop\.$/,
    );
    expect(report.warnings).toEqual([
      'Where stops get longer, the next one is likely the longest yet: drive the brakes cool, then look at pads, fluid and rotors before driving hard.',
      'Tires and driver tire with the brakes: that distance and temperature rise together does not yet make the one the cause of the other.',
    ]);
  });

  it('claims no fade where there is none, and says that no temperature stands beside it', () => {
    const cool = faded({ set: set('steady', reportOf('steady.csv', steady)) });
    expect(cool.sentence).toMatch(
      /^From 67\.1 mph, no sure fade shows: over 8 stops the last is .* shorter to .* longer than the first, and no temperature was recorded beside them\.$/,
    );
    expect(cool.warnings).toEqual([
      'Stops without a sure fade say nothing of more of them, of hotter ones or of a long descent.',
    ]);
  });

  it('doubts a rotor hotter than rotors last', () => {
    const glowing = fading.map((stop, run) => ({ ...stop, rotor: 90 + 200 * run }));
    const { warnings } = faded({ set: set('glowing', reportOf('glowing.csv', glowing)) });
    expect(warnings.join('\n')).toMatch(/reads 2710 °F, hotter than a rotor lasts: check its unit/);
  });

  it('holds a second set against the first, and says what else differed', () => {
    const after = {
      ...set('with the kit', reportOf('steady.csv', steady)),
      runs: [madeRun({ id: 'b', setUp: 'kit', log: 'steady.csv', date: '2026-05-23', tires: 'new' })],
    };
    const before = {
      ...hot,
      runs: [madeRun({ id: 'a', setUp: 'as-found', log: 'hot.csv', date: '2026-05-23', tires: 'old' })],
    };
    const both = faded({ set: before, against: after, units: 'metric' });
    expect(both.slopeDifference_m_per_stop?.high).toBeLessThan(0);
    expect(both.sentence).toMatch(
      /^From 108 km\/h, in "as found" the stops get longer: .*; in "with the kit" no sure fade shows: .*: the second adds \d.* m less with each stop\.$/,
    );
    expect(both.warnings).toContain(
      'Different between the two sets, besides the set-up: tires: old before, new after.',
    );
    const fewer = set('short', reportOf('short.csv', fading.slice(0, 5)));
    expect(faded({ set: hot, against: fewer }).warnings.join('\n')).toContain(
      'not driven by one schedule (8 stops',
    );
  });

  it('keeps the number of a stop that does not count, with the reason, and counts on over the logs', () => {
    const weak = [...fading.slice(0, 2), { speed: 21, deceleration: 7.7, rotor: 180 }, ...fading.slice(3)];
    const [first, second] = [reportOf('one.csv', weak.slice(0, 4)), reportOf('two.csv', weak.slice(4))];
    const found = faded({ set: set('two logs', first, second) });
    expect(found.set.stops.map(({ log, number, counted }) => [log, number, counted])).toEqual([
      ['one.csv', 1, true],
      ['one.csv', 2, true],
      ['one.csv', 3, false],
      ['one.csv', 4, true],
      ['two.csv', 5, true],
      ['two.csv', 6, true],
      ['two.csv', 7, true],
      ['two.csv', 8, true],
    ]);
    expect(found.set.stops[4]?.restedFor_s).toBeNull();
    expect(found.warnings[1]).toMatch(
      /^1 stop of "two logs" left out; the first: stop 3, .* keeps its number\.$/,
    );
  });
});

describe('stops that show no fade', () => {
  it.each<readonly [string, ReportFadeInput, string, RegExp]>([
    [
      'are too few',
      { set: set('short', reportOf('short.csv', fading.slice(0, 2))) },
      'too-few-to-fade',
      /^"short" has 2 stops that count; a fade takes at least three/,
    ],
    [
      'are given twice',
      { set: hot, against: set('copy', ...hot.reports) },
      'same-log',
      /^hot\.csv and hot\.csv hold the very same stops/,
    ],
    [
      'are none that count',
      {
        set: set('slow', {
          ...reportOf('slow.csv', [{ deceleration: 1.5 }]),
          nominalSpeed_m_s: null,
        }),
      },
      'no-stop-counts',
      /^"slow" has no stop that counts/,
    ],
    [
      'were meant from two speeds',
      { set: hot, against: set('b', { ...reportOf('b.csv', steady), nominalSpeed_m_s: 25 }) },
      'nominal-speeds-differ',
      /^The logs were meant from different speeds/,
    ],
  ])('because they %s get one sentence', (_name, input, code, sentence) => {
    const refused = reportFade(input);
    expect(fadeRefusal.parse(refused).code).toBe(code);
    expect(refused.sentence).toMatch(sentence);
  });
});

describe('what the model expects of the same stops', () => {
  const reading = readJob(exampleJobText, { file: 'job.yaml' });
  if (!reading.ok) throw new Error('the example job is not a job');
  const { job } = reading;
  const expected = expectFade(job, { setUp: 'as-found', set: hot, nominalSpeed: 30, draws: 12 });

  it('starts at the measured temperature and drives as many stops', () => {
    expect(expected?.temperatures).toHaveLength(8);
    expect(expected?.temperatures[0]).toBeCloseTo(90, 6);
    expect(expected?.temperatures[7]).toBeGreaterThan(200);
    expect(expected?.growth.high).toBeGreaterThan(expected?.growth.low ?? NaN);
    expect(expected?.warnings).toEqual([]);
  });

  it('gets hotter with shorter rests, and says where nobody knows how it began', () => {
    const text = {
      ...hot,
      reports: hot.reports.map((one) => ({
        ...one,
        stops: one.stops.map((stop) => ({ ...stop, temperatures: [], start_s: 3 * stop.start_s })),
      })),
    };
    const slow = expectFade(job, { setUp: 'as-found', set: text, nominalSpeed: 30, draws: 2 });
    expect(slow?.temperatures[7]).toBeLessThan(expected?.temperatures[7] ?? NaN);
    expect(slow?.warnings[0]).toContain('the model starts at the temperature of the job');
  });

  it('stands beside the measured growth, in a sentence', () => {
    if (expected === null) throw new Error('the car does not stop');
    const report = faded({ set: hot, expectation: expected });
    expect(report.expectation?.growth_m).toEqual(expected.growth);
    expect(report.expectation?.sentence).toMatch(
      /^The model expects of "as-found" a last stop .* than the first, with the hottest rotor at \d+ °F at the start of a stop; measured is .* longer: (?:the two agree within what is known|the car fades (?:more|less) than the model has it)\.$/,
    );
  });
});
