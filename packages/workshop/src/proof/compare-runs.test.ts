import { describe, expect, it } from 'vitest';
import { comparison, comparisonRefusal } from '../results/log-report.ts';
import type { Comparison, ComparisonRefusal, LogReport } from '../results/log-report.ts';
import { compareRuns } from './compare-runs.ts';
import type { CompareRunsInput } from './compare-runs.ts';
import { logOf } from './log.testing.ts';
import type { InventedStop } from './log.testing.ts';
import { reportLog } from './report-log.ts';

function reportOf(stops: readonly InventedStop[], nominalSpeed?: number): LogReport {
  const report = reportLog(
    { name: 'run.csv', content: logOf(stops) },
    nominalSpeed === undefined ? {} : { nominalSpeed },
  );
  if (report.kind !== 'log-report') throw new Error(report.sentence);
  return report;
}

function stopsOf(decelerations: readonly number[]): InventedStop[] {
  return decelerations.map((deceleration) => ({ deceleration }));
}

const slow = reportOf(stopsOf([7.6, 7.5, 7.7, 7.55, 7.65]), 30);
const fast = reportOf(stopsOf([8.5, 8.6, 8.4, 8.55, 8.45]), 30);
const noisy = reportOf(stopsOf([7.2, 8.1, 7.0, 8.2, 7.5]), 30);

function sets(before: LogReport, after: LogReport, more: Partial<CompareRunsInput> = {}): CompareRunsInput {
  return {
    before: { name: 'before', reports: [before] },
    after: { name: 'after', reports: [after] },
    seed: 1,
    ...more,
  };
}

function compared(input: CompareRunsInput): Comparison {
  const result = compareRuns(input);
  if (result.kind !== 'comparison') throw new Error(result.sentence);
  return result;
}

/** What the model expects, as an interval around a value, m. */
function expectation(value: number, half: number): Partial<CompareRunsInput> {
  return {
    expectation: { setUp: 'front-kit', difference: { value, low: value - half, high: value + half } },
  };
}

function refused(input: CompareRunsInput): ComparisonRefusal {
  const result = compareRuns(input);
  if (result.kind !== 'comparison-refusal') throw new Error('it was compared');
  expect(comparisonRefusal.parse(result)).toEqual(result);
  return result;
}

describe('a comparison', () => {
  const shorter = compared(sets(slow, fast));

  it('is what its published schema says', () => {
    expect(comparison.parse(JSON.parse(JSON.stringify(shorter)))).toEqual(shorter);
  });

  it('says what a person can repeat', () => {
    expect(shorter.sentence).toMatch(
      /^From 67\.1 mph the car now stops 18 to 23 ft shorter on average \(mean \d+(?:\.\d)? ft before, \d+(?:\.\d)? ft after; 5 stops before, 5 after\)\.$/,
    );
    expect(compared(sets(fast, slow)).sentence).toMatch(/ft longer on average/);
    expect(compared(sets(slow, fast, { units: 'metric' })).sentence).toMatch(
      /^From 108 km\/h the car now stops \d(?:\.\d)? to \d(?:\.\d)? m shorter/,
    );
  });

  it('does not call luck a difference', () => {
    const same = compared(sets(slow, noisy));
    expect(same.difference_m.low).toBeLessThan(0);
    expect(same.difference_m.high).toBeGreaterThan(0);
    expect(same.sentence).toMatch(
      /^From 67\.1 mph these stops show no sure difference: \d+(?:\.\d)? ft shorter to \d+(?:\.\d)? ft longer/,
    );
  });

  it('says in its first sentence what was changed too, and what the brakes can not have made of it', () => {
    const confounders = ['tires: old before, new after'];
    const alone = compared(sets(slow, fast, { confounders }));
    expect(alone.sentence).toMatch(
      /^From 67\.1 mph the car now stops 18 to 23 ft shorter, but the tires were changed too; these stops alone can't say how much of it is the brakes\.$/,
    );
    const part = compared(sets(slow, fast, { ...expectation(-2, 0.5), confounders })).sentence;
    expect(part).toMatch(
      /^From 67\.1 mph the car now stops 18 to 23 ft shorter, but the tires were changed too; 1\d to 1\d ft of it is more than the brakes explain\.$/,
    );
    const all = compared(sets(slow, fast, { ...expectation(-6, 2), confounders })).sentence;
    expect(all).toMatch(/tires were changed too; the brakes could explain all of it, and need not\.$/);
    const more = compared(sets(slow, fast, { ...expectation(-12, 1), confounders })).sentence;
    expect(more).toMatch(/; the brakes alone were expected to make 1\d to 2\d ft more of it\.$/);
    const against = compared(sets(slow, fast, { ...expectation(3, 1), confounders })).sentence;
    expect(against).toMatch(/; the brakes alone were expected to make it \d+ to \d+ ft longer\.$/);
    const luck = compared(sets(slow, noisy, { confounders: [...confounders, 'date: 1 before, 2 after'] }));
    expect(luck.sentence).toMatch(/longer, and the tires were changed and the day was different too \(mean/);
  });

  it('puts first what must be known first', () => {
    const few = reportOf(stopsOf([8.5, 8.6, 8.4]), 30);
    expect(compared(sets(slow, few, { warnings: ['Another set-up.'] })).warnings[0]).toBe('Another set-up.');
  });

  it('names what else was different', () => {
    const other = { ...fast, epoch: '2026-10-31T09:00:00Z' };
    const { confounders } = compared(
      sets({ ...slow, epoch: '2026-10-03T09:00:00Z' }, other, {
        confounders: ['tires: old before, new after'],
      }),
    );
    expect(confounders).toEqual([
      'tires: old before, new after',
      'different days: 2026-10-03 before, 2026-10-31 after; weather, tires and surface change with them',
    ]);
  });

  it('names a start that is told by other signals', () => {
    const byOnset = {
      ...fast,
      stops: fast.stops.map((stop) => ({ ...stop, startBy: 'deceleration-onset' as const })),
    };
    expect(compared(sets(slow, byOnset)).confounders[0]).toMatch(
      /^the start of a stop is told by different signals: brake switch before, onset of deceleration after/,
    );
  });

  it('takes the delay of each logger into the difference where the logs come from two, and says so', () => {
    const channels = fast.channels.map((channel) =>
      channel.quantity === 'speed' ? { ...channel, name: 'GPS speed' } : channel,
    );
    const one = compared(sets(slow, fast));
    const two = compared(sets(slow, { ...fast, channels }));
    expect([one.sameLogger, two.sameLogger]).toEqual([true, false]);
    expect(one.confounders).toEqual([]);
    expect(two.confounders[0]).toMatch(
      /^the logs seem to come from different loggers: CSV with "speed \(km\/h\)", "brake switch" before, CSV with "GPS speed", "brake switch" after; each has its own unknown delay/,
    );
    // 0.05 s at 30 m/s on either side
    const half = Math.hypot(one.difference_m.high - one.difference_m.value, 1.959964 * Math.SQRT2 * 1.5);
    expect(two.difference_m.high - two.difference_m.value).toBeCloseTo(half, 1);
    expect(two.sentence).toContain('but the sets were recorded in different ways too; these stops alone');
    expect(one.sentence).not.toContain('recorded');
  });

  it('knows the delay of reports that were kept before it was written down', () => {
    const old = {
      ...slow,
      stops: slow.stops.map(({ startDelayError_s: _delay, ...stop }) => stop),
    };
    expect(compared(sets(old, fast)).before.mean_m).toEqual(compared(sets(slow, fast)).before.mean_m);
  });

  it('warns of a trend inside a set, of few stops and of what was left out', () => {
    const fading = reportOf(stopsOf([8.4, 8.2, 8.05, 7.8, 7.6]), 30);
    expect(compared(sets(fading, fast)).warnings.join('\n')).toMatch(
      /In "before" each stop is .* longer \(fade\?\) than the one before/,
    );
    const few = reportOf([...stopsOf([8.5, 8.6, 8.4]), { speed: 22, deceleration: 8 }], 30);
    const warnings = compared(sets(slow, few)).warnings.join('\n');
    expect(warnings).toContain('"after" has only 3 stops');
    expect(warnings).toMatch(/1 stop of "after" left out; the first: stop 4, /);
  });

  it('says where best against best claims more than the means carry', () => {
    const lucky = reportOf(stopsOf([7.5, 7.4, 7.6, 7.3, 9.4]), 30);
    const { bestOfEach, warnings, difference_m } = compared(sets(slow, lucky));
    expect(bestOfEach.difference_m).toBeLessThan(difference_m.low);
    expect(warnings.join('\n')).toMatch(
      /Best against best would say [\d.]+ ft shorter, which the means do not carry/,
    );
  });

  it('picks a round speed where nobody gave one, and says so', () => {
    const before = reportOf([
      { speed: 26.9, deceleration: 7.6 },
      { speed: 27, deceleration: 7.5 },
      { speed: 26.95, deceleration: 7.7 },
    ]);
    const after = reportOf([
      { speed: 26.9, deceleration: 8.6 },
      { speed: 27, deceleration: 8.5 },
      { speed: 26.95, deceleration: 8.7 },
    ]);
    const guessed = compared(sets(before, after));
    expect(guessed.warnings[0]).toMatch(/^Only the stops are known, not the day, the tires/);
    expect(guessed.nominalSpeed_m_s).toBeCloseTo(60 * 0.44704, 9);
    expect(guessed.warnings[1]).toMatch(/^No nominal speed was given: distances are corrected to 60 mph/);
  });

  it('corrects to another speed where asked', () => {
    const at20 = compared(sets(slow, fast, { nominalSpeed: 27 }));
    expect(at20.nominalSpeed_m_s).toBe(27);
    expect(at20.before.mean_m.value / compared(sets(slow, fast)).before.mean_m.value).toBeCloseTo(
      (27 / 30) ** 2,
      3,
    );
  });
});

describe('two sets that can not be compared', () => {
  it.each<readonly [string, CompareRunsInput, string, RegExp]>([
    [
      'meant from different speeds',
      sets(slow, { ...fast, nominalSpeed_m_s: 26.8224 }),
      'nominal-speeds-differ',
      /^The runs were meant from different speeds \(67\.1 mph, 60 mph\)/,
    ],
    [
      'without a stop',
      sets(reportOf([{ deceleration: 1.5 }]), reportOf([{ deceleration: 1.5 }])),
      'no-stop-counts',
      /^Neither set has a stop that counts/,
    ],
    [
      'of one stop',
      sets(slow, reportOf(stopsOf([8.5]), 30)),
      'set-too-small',
      /^"after" has 1 stop that counts; a comparison needs at least two in each set/,
    ],
    [
      'that are one and the same log',
      sets(slow, { ...slow, source: { ...slow.source, name: 'copy.csv' } }),
      'same-log',
      /^run\.csv and copy\.csv hold the very same stops, in two sets: a set held against itself shows nothing/,
    ],
    [
      'with one log twice on a side',
      { ...sets(slow, fast), after: { name: 'after', reports: [fast, fast] } },
      'same-log',
      /^run\.csv is given twice, both after: stops counted twice feign certainty/,
    ],
    [
      'from a gate that no report has',
      sets(slow, reportOf(stopsOf([8.5, 8.4, 8.6])), { definition: 'gate' }),
      'no-gate-distance',
      /^The distance from the speed gate needs one nominal speed/,
    ],
  ])('%s get one sentence', (_name, input, code, sentence) => {
    const refusal = refused(input);
    expect(refusal.code).toBe(code);
    expect(refusal.sentence).toMatch(sentence);
  });
});

describe('what the brakes can explain', () => {
  it('is a share of a change that was measured, with what is left', () => {
    const { expectation: part, difference_m } = compared(sets(slow, fast, expectation(-2, 0.5)));
    expect(part?.explainedShare?.value).toBeCloseTo(-2 / difference_m.value, 9);
    expect(part?.explainedShare?.low).toBeGreaterThan(0.15);
    expect(part?.explainedShare?.high).toBeLessThan(0.45);
    expect(part?.sentence).toMatch(
      /the brakes can explain \d+ to \d+ % of it\. The rest \(.* ft shorter\) is tires, surface, driver, warm-up or what the model lacks\.$/,
    );
  });

  it('leaves the model out of the rest where nothing was assumed', () => {
    const stated = { setUp: 'front-kit', difference: { value: -2, low: -2.5, high: -1.5 }, assumed: 0 };
    expect(compared(sets(slow, fast, { expectation: stated })).expectation?.sentence).toMatch(
      /is tires, surface, driver or warm-up\.$/,
    );
  });

  it('agrees where the two agree', () => {
    const measured = compared(sets(slow, fast)).difference_m.value;
    expect(compared(sets(slow, fast, expectation(measured, 1))).expectation?.sentence).toMatch(
      /the two agree within what is known\.$/,
    );
  });

  it('is not named where the measured change may be zero', () => {
    const { expectation: part } = compared(sets(slow, noisy, expectation(-2, 0.5)));
    expect(part?.explainedShare).toBe(null);
    expect(part?.sentence).toMatch(
      /the measured change can't be told from zero, so no share of it can be named\.$/,
    );
  });

  it('is none where the brakes were expected to do nothing', () => {
    const { expectation: part } = compared(sets(slow, fast, expectation(0, 0.01)));
    expect(part?.sentence).toContain('the brakes can explain none of it');
  });
});
