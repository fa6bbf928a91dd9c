import { describe, expect, it } from 'vitest';
import type { JobRun } from '../../job/job.ts';
import { comparison } from '../../results/log-report.ts';
import type { Comparison, LogReport } from '../../results/log-report.ts';
import { compareRuns } from '../compare-runs.ts';
import type { CompareRunsInput } from '../compare-runs.ts';
import { logOf } from '../log.testing.ts';
import { madeRun, stated } from '../made-run.testing.ts';
import { reportLog } from '../report-log.ts';
import type { RunSet } from '../sets/run-set.ts';

function reportOf(decelerations: readonly number[]): LogReport {
  const content = logOf(decelerations.map((deceleration) => ({ deceleration })));
  const report = reportLog({ name: `${decelerations.join('-')}.csv`, content }, { nominalSpeed: 30 });
  if (report.kind !== 'log-report') throw new Error(report.sentence);
  return report;
}

const slow = reportOf([7.6, 7.5, 7.7, 7.55, 7.65]);
const fast = reportOf([8.5, 8.6, 8.4, 8.55, 8.45]);
/** The old set-up on a better day. */
const better = reportOf([8.1, 8.2, 8, 8.15, 8.05]);
const single = reportOf([8.1]);

function set(report: LogReport, facts: Partial<JobRun>, more: Partial<LogReport> = {}): RunSet {
  const run = madeRun({ id: 'run', setUp: 'any', log: report.source.name, ...facts });
  return { name: 'set', reports: [{ ...report, ...more }], runs: [run] };
}

function compared(sets: Omit<CompareRunsInput, 'seed'>): Comparison {
  const result = compareRuns({ seed: 1, ...sets });
  if (result.kind !== 'comparison') throw new Error(result.sentence);
  expect(comparison.parse(JSON.parse(JSON.stringify(result)))).toEqual(result);
  return result;
}

const first = { date: '2026-05-09', tires: 'old', surface: 'dry', driver: 'Ann' };
const second = { ...first, date: '2026-05-23' };
const value = ({ stops }: LogReport): number =>
  stops.reduce((sum, stop) => sum + (stop.correctedDistance_m ?? NaN), 0) / stops.length;

describe('sets of different days', () => {
  const alone = compared({ before: set(slow, first), after: set(fast, second) });

  it('are confounded, say what differed and ask for a control, in a sentence each', () => {
    expect(alone.confounded).toBe(true);
    expect(alone.confounders).toEqual(['date: 2026-05-09 before, 2026-05-23 after']);
    expect(alone.advice).toEqual([
      'Drive the old set-up once more as the new one was driven (same day): old, new, old tells the change from the rest.',
      'Or, next time, drive a second car that nobody changes beside this one, before and after: what moves with it is not the change.',
    ]);
    expect(alone.sentence).toMatch(/shorter, but the day was different too; these stops alone can't say/);
    expect(alone.control).toBeNull();
  });

  it('are told apart by a repeat of the old set-up on the second day, which then leads', () => {
    const controlled = compared({
      before: set(slow, first),
      after: set(fast, second),
      repeat: set(better, second),
    });
    expect([controlled.confounded, controlled.advice, controlled.confounders]).toEqual([false, [], []]);
    const { control } = controlled;
    expect(control).toMatchObject({ kind: 'repeat', count: 5 });
    expect(control?.difference_m.value).toBeCloseTo(value(fast) - value(better), 6);
    expect(control?.drift_m.value).toBeCloseTo(value(better) - value(slow), 6);
    expect(controlled.difference_m.value).toBeCloseTo(value(fast) - value(slow), 6);
    expect(controlled.sentence).toMatch(
      /^From 67\.1 mph the car now stops \d+(?:\.\d)? to \d+(?:\.\d)? ft shorter on average than with the old set-up, which was driven again \(mean .*; 5 stops before, 5 after, 5 of the repeat\)/,
    );
    expect(control?.sentence).toMatch(
      /^Driven once more \(5 stops\), the old set-up stopped \d+(?:\.\d)? to \d+(?:\.\d)? ft shorter than before; with that taken out the new one stops \d+(?:\.\d)? to \d+(?:\.\d)? ft shorter\.$/,
    );
    // What led before is twice as much
    expect(control?.difference_m.low).toBeGreaterThan(controlled.difference_m.high);
  });

  it('stay confounded where the repeat was on the old tires and the new set-up was not', () => {
    const found = compared({
      before: set(slow, first),
      after: set(fast, { ...second, tires: 'new' }),
      repeat: set(better, second),
    });
    expect(found.confounded).toBe(true);
    expect(found.confounders).toEqual(['tires: old before, new after']);
    expect(found.advice).toEqual([
      'Repeat the old set-up as the new one was driven (same tires): the repeat that is there was not driven so.',
    ]);
    expect(found.sentence).toMatch(/shorter than with the old set-up, .*, but the tires were changed too;/);
  });

  it('are told apart by a reference car on both days, but for the tires', () => {
    const reference = {
      before: set(reportOf([8, 7.9, 8.1, 8]), first),
      after: set(reportOf([8.5, 8.4, 8.6, 8.5]), second),
    };
    const found = compared({ before: set(slow, first), after: set(fast, second), reference });
    expect(found.confounded).toBe(false);
    expect(found.control).toMatchObject({ kind: 'reference-car', count: 8 });
    const moved = value(reference.after.reports[0] ?? fast) - value(reference.before.reports[0] ?? fast);
    expect(found.control?.drift_m.value).toBeCloseTo(moved, 6);
    expect(found.control?.difference_m.value).toBeCloseTo(value(fast) - value(slow) - moved, 6);
    const onTires = compared({
      before: set(slow, first),
      after: set(fast, { ...second, tires: 'new' }),
      reference,
    });
    expect(onTires.confounders).toEqual(['tires: old before, new after']);
    expect(onTires.advice).toHaveLength(1);
  });

  it('stay confounded where the reference car was driven on one of the days only, or nobody knows when', () => {
    const [one, other] = [reportOf([8, 7.9, 8.1, 8]), reportOf([8.5, 8.4, 8.6, 8.5])];
    const sameDay = { before: set(one, first), after: set(other, first) };
    const unknown = { before: set(one, {}), after: set(other, {}) };
    for (const reference of [sameDay, unknown]) {
      const found = compared({ before: set(slow, first), after: set(fast, second), reference });
      expect(found.confounders).toEqual(['date: 2026-05-09 before, 2026-05-23 after']);
    }
  });

  it('stay confounded by what only a person says, unless the runs tell that the control was alike', () => {
    const confounders = ['tires: old before, new after', 'date: 1 before, 2 after', 'The road was swept.'];
    const plain = (report: LogReport): RunSet => ({ name: 'set', reports: [report] });
    const texts = (left: Comparison): readonly string[] => left.confounders;
    const sets = { before: plain(slow), after: plain(fast), confounders };
    expect(texts(compared({ ...sets, repeat: plain(better) }))).toEqual(confounders);
    const reference = {
      before: set(reportOf([8, 7.9, 8.1]), first),
      after: set(reportOf([8.5, 8.4]), second),
    };
    expect(texts(compared({ ...sets, reference }))).toEqual(confounders);
    const told = { before: set(slow, first), after: set(fast, { ...second, tires: 'new' }), confounders };
    const repeat = set(better, { ...second, tires: 'new' });
    expect(texts(compared({ ...told, repeat }))).toEqual(['The road was swept.']);
  });

  it('are not controlled by a single stop, and that is told', () => {
    const found = compared({
      before: set(slow, first),
      after: set(fast, second),
      repeat: set(single, second),
    });
    expect(found.control).toBeNull();
    expect(found.confounded).toBe(true);
    expect(found.warnings).toContain(
      'The repeat of the old set-up has 1 stop that counts, too few to control anything: it takes two, better as many as the other sets have.',
    );
  });
});

describe('sets of one day', () => {
  it('have a drift that goes evenly with time taken out by a repeat halfway', () => {
    const found = compared({ before: set(slow, first), after: set(fast, first), repeat: set(better, first) });
    expect(found.control?.difference_m.value).toBeCloseTo(value(fast) - (value(slow) + value(better)) / 2, 6);
  });

  it('take the place of the new set-up from the clocks of the logs', () => {
    const found = compared({
      before: set(slow, first, { epoch: '2026-05-09T09:00:00Z' }),
      after: set(fast, first, { epoch: '2026-05-09T10:30:00Z' }),
      repeat: set(better, first, { epoch: '2026-05-09T11:00:00Z' }),
    });
    expect(found.control?.difference_m.value).toBeCloseTo(
      value(fast) - (0.25 * value(slow) + 0.75 * value(better)),
      2,
    );
  });

  it('are confounded by temperatures far apart, but not where a repeat lies as far on the other side', () => {
    const at = (celsius: number): Partial<JobRun> => ({
      ...first,
      surfaceTemperature: stated('surfaceTemperature', celsius),
    });
    const alone = compared({ before: set(slow, at(15)), after: set(fast, at(30)) });
    expect(alone.confounders).toEqual(['road temperature: 59 °F before, 86 °F after']);
    expect(alone.sentence).toContain("but the road's temperature was different too");
    const repeated = compared({
      before: set(slow, at(15)),
      after: set(fast, at(30)),
      repeat: set(better, at(45)),
    });
    expect(repeated.confounded).toBe(false);
    const near = compared({ before: set(slow, at(15)), after: set(fast, at(20)) });
    expect(near.confounded).toBe(false);
  });

  it('are confounded by another driver, another logger and one direction each', () => {
    const found = compared({
      before: set(slow, { ...first, direction: 'out', logger: 'box 1' }),
      after: set(fast, { ...first, driver: 'Ben', direction: 'back', logger: 'box 2' }),
    });
    expect(found.confounders).toEqual([
      'driver: Ann before, Ben after',
      'logger: box 1 before, box 2 after',
      'direction: out before, back after',
    ]);
    expect(found.sameLogger).toBe(false);
    expect(found.advice).toEqual([
      'Drive the old set-up once more as the new one was driven (same driver and directions): old, new, old tells the change from the rest.',
      'Measure both sets with one logger, one rate and one signal for the start of the brake.',
    ]);
  });

  it('whose facts nobody wrote down are not called alike', () => {
    const found = compared({ before: set(slow, { date: '2026-05-09' }), after: set(fast, first) });
    expect(found.confounded).toBe(false);
    expect(found.warnings).toContain(
      'The job does not say of both sides what the tires and the surface were: nobody knows whether that differed.',
    );
  });

  it('leave out of use the control that leaves more open', () => {
    const found = compared({
      before: set(slow, first),
      after: set(fast, { ...first, tires: 'new' }),
      repeat: set(better, { ...first, tires: 'new' }),
      reference: {
        before: set(reportOf([8, 7.9, 8.1]), first),
        after: set(reportOf([8.3, 8.2, 8.4]), first),
      },
    });
    expect(found.control?.kind).toBe('repeat');
    expect(found.confounded).toBe(false);
    expect(found.warnings).toContain(
      'The reference car is there too, but leaves more open than the repeat of the old set-up, and is not used.',
    );
    expect(found.warnings).toContain(
      'The new set-up is held against the repeat alone, because only that was driven alike.',
    );
  });

  it('refuse one log as before and as repeat', () => {
    const before = set(slow, first);
    expect(compareRuns({ before, after: set(fast, first), repeat: before, seed: 1 })).toMatchObject({
      kind: 'comparison-refusal',
      code: 'same-log',
    });
  });
});

describe('a comparison with judgements and conditions', () => {
  const noisy = [7.2, 8.1, 7.0, 8.2, 7.5];

  function judgedReport(decelerations: readonly number[], numbers: readonly number[]): LogReport {
    const plain = reportOf(decelerations);
    const judgements = numbers.map((number) => {
      const { start_s = NaN, end_s = NaN } = plain.stops[number - 1] ?? {};
      return { at: (start_s + end_s) / 2, verdict: 'rejected' as const, reason: 'The road was wet.' };
    });
    const report = reportLog(
      { name: 'judged.csv', content: logOf(decelerations.map((deceleration) => ({ deceleration }))) },
      { nominalSpeed: 30, judgements },
    );
    if (report.kind !== 'log-report') throw new Error(report.sentence);
    return report;
  }

  it('names what was judged away and what the answer would be without that', () => {
    const found = compared({
      before: set(slow, first),
      after: set(judgedReport(noisy, [1, 3, 5]), first),
    });
    expect(found.after.count).toBe(2);
    expect(found.after.leftOut).toEqual(
      [1, 3, 5].map((number) => ({ log: 'judged.csv', number, reason: 'The road was wet.' })),
    );
    expect(found.after.judged.map(({ verdict }) => verdict)).toEqual(['rejected', 'rejected', 'rejected']);
    expect(found.warnings.join('\n')).toMatch(
      /3 stops were rejected or restored by hand; without that the difference would be \d+(?:\.\d)? ft shorter to \d+(?:\.\d)? ft longer, not \d+(?:\.\d)? to \d+(?:\.\d)? ft shorter\./,
    );
  });

  it('is refused where judging leaves one stop, with the reason of the others', () => {
    const refused = compareRuns({
      before: set(slow, first),
      after: set(judgedReport(noisy, [1, 2, 3, 5]), first),
      seed: 1,
    });
    expect(refused).toMatchObject({ kind: 'comparison-refusal', code: 'set-too-small' });
    expect(refused.sentence).toContain('"set" has 1 stop that counts (left out: stop 1, The road was wet)');
  });

  it('takes the trend over the runs and the direction out, and says what each does', () => {
    const noise = [0.01, -0.02, 0.015, -0.01, 0.02, -0.015, 0, 0.005];
    const alternating = (base: number): RunSet => {
      const reports = noise.map((part, run) =>
        reportOf([base + (run % 2 === 0 ? 0.1 : -0.1) - 0.05 * run + part]),
      );
      const runs = reports.map((_, run) =>
        madeRun({
          id: `r${run}`,
          setUp: 'any',
          log: 'any',
          ...first,
          direction: run % 2 === 0 ? 'out' : 'back',
        }),
      );
      return { name: 'set', reports, runs };
    };
    const found = compared({ before: alternating(7.6), after: alternating(8.4) });
    const { takenOut = [], sentence, difference_m } = found.adjusted ?? {};
    // A harder stop loses fewer feet for the same loss of deceleration, so that each set has a slope of its own.
    expect(takenOut.map(({ what }) => what)).toEqual([
      'order of the runs before',
      'order of the runs after',
      'first run of a set',
      'direction',
    ]);
    expect(takenOut[3]?.effect.high).toBeLessThan(0);
    expect(sentence).toMatch(
      /^With order of the runs before, order of the runs after, first run of a set and direction taken out, the change is \d.* ft shorter; each later run before is .* ft longer, each later run after is .* ft longer and a run out is .* ft shorter\.$/,
    );
    const width = ({ low, high }: { readonly low: number; readonly high: number }): number => high - low;
    expect(width(difference_m ?? { low: NaN, high: NaN })).toBeLessThan(width(found.difference_m) / 2);
    expect(found.bootstrap_m?.low).toBeLessThan(found.difference_m.value);
    expect(found.before.warmUp_m).not.toBeNull();
  });

  it('tells out from back by recorded headings where one log holds both', () => {
    const noise = [0.01, -0.02, 0.015, -0.01, 0.02, -0.015, 0, 0.005];
    const recorded = (base: number, degrees: number): RunSet => {
      const report = reportOf(noise.map((part, run) => base + (run % 2 === 0 ? 0.1 : -0.1) + part));
      const stops = report.stops.map((stop, run) => ({
        ...stop,
        heading_rad: ((degrees + (run % 2 === 0 ? 0 : 180)) * Math.PI) / 180,
      }));
      return { name: 'set', reports: [{ ...report, stops }] };
    };
    const found = compared({ before: recorded(7.6, 358), after: recorded(8.4, 2) });
    const direction = found.adjusted?.takenOut.find(({ what }) => what === 'direction');
    expect(direction?.effect.high).toBeLessThan(0);
    const across = compared({ before: recorded(7.6, 0), after: recorded(8.4, 90) });
    expect(across.adjusted?.takenOut.map(({ what }) => what)).not.toContain('direction');
  });
});
