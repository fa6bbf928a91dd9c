import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../../job/example-job.testing.ts';
import type { Job } from '../../job/job.ts';
import { readJob } from '../../job/reading/read-job.ts';
import { testPlan } from '../../results/test-plan.ts';
import type { TestPlan } from '../../results/test-plan.ts';
import { logOf } from '../log.testing.ts';
import { reportLog } from '../report-log.ts';
import type { RunSet } from '../sets/run-set.ts';
import { planTest } from './plan-test.ts';
import type { PlanTestInput } from './plan-test.ts';

function jobWith(test: string): Job {
  const reading = readJob(`${exampleJobText}\n${test}`, { file: 'job.yaml' });
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.job;
}

function planned(input: PlanTestInput): TestPlan {
  const plan = planTest(input);
  expect(testPlan.parse(JSON.parse(JSON.stringify(plan)))).toEqual(plan);
  return plan;
}

function setOf(decelerations: readonly number[]): RunSet {
  const report = reportLog(
    { name: 'run.csv', content: logOf(decelerations.map((deceleration) => ({ deceleration }))) },
    { nominalSpeed: 30 },
  );
  if (report.kind !== 'log-report') throw new Error(report.sentence);
  return { name: 'set', reports: [report] };
}

const foot = 0.3048;

describe('a plan without anything known', () => {
  const plan = planned({});

  it('assumes, and says each time that it does', () => {
    expect(plan.spreadOrigin).toBe('assumed');
    // 60 mph at 8 m/s²: 44.96 m, 3 % of it
    expect(plan.spread_m).toBeCloseTo(0.03 * (26.8224 ** 2 / 16), 9);
    expect(plan.resolution_m).toBeCloseTo(3 * foot, 12);
    expect(plan.coolDown).toMatchObject({ origin: 'assumed', startTemperature_C: { low: 65, high: 100 } });
    expect(plan.sentence).toMatch(
      /^To see a difference of 3 ft from 60 mph, drive \d+ stops with each set-up, old, new and old again, \d+ in all with the warm-ups: single stops are assumed to scatter by 3 % of their distance \(4\.4\d ft\), which nobody measured on this car\.$/,
    );
    const said = plan.warnings.join('\n');
    expect(said).toContain('The spread is assumed: drive');
    expect(said).toContain('How long a stop is, is assumed (148 ft, at 0.816 g)');
    expect(said).toContain('is that of regulations');
  });

  it('has every set in one block with its warm-ups first, out and back in turn', () => {
    expect(plan.runs).toHaveLength(3 * (plan.runsPerSet + 2));
    expect([...new Set(plan.runs.map(({ set }) => set))]).toEqual(['before', 'after', 'repeat']);
    const after = plan.runs.filter(({ set }) => set === 'after');
    expect(after.slice(0, 3).map(({ purpose }) => purpose)).toEqual(['warm-up', 'warm-up', 'counted']);
    const out = after.filter(({ purpose, direction }) => purpose === 'counted' && direction === 'out');
    expect(out).toHaveLength(plan.runsPerSet / 2);
    expect(plan.duration_min.value).toBeCloseTo((plan.runs.length * 180) / 60, 9);
  });

  it('puts safety first: the closed course, and slow stops before anything is measured', () => {
    expect(plan.cautions[0]).toMatch(/^Only on a closed course/);
    const said = plan.cautions.join('\n');
    for (const word of ['run off', 'no leak', 'slow ones', 'long or soft', 'helper', 'Belts', 'never park'])
      expect(said).toContain(word);
    const order = [
      'cautions',
      'Check the car',
      'slow stops',
      'before, with',
      'Fit the new parts',
      'after, with',
      'Fit the old parts',
      'repeat',
      'Save each set',
    ];
    const places = order.map((word) => plan.steps.findIndex((step) => step.includes(word)));
    expect(places).toEqual(places.toSorted((one, other) => one - other));
    expect(places).not.toContain(-1);
  });

  it('says why each condition is written down', () => {
    const what = plan.conditions.map((one) => one.what).join('\n');
    for (const word of [
      'pressure cold and warm',
      'temperature before each stop',
      'Air temperature, wind',
      'Fuel',
      'who drove',
      'ABS',
    ])
      expect(what).toContain(word);
    expect(plan.conditions.every(({ why }) => why.endsWith('.'))).toBe(true);
  });
});

describe('a plan from earlier stops', () => {
  const sets = [setOf([7.6, 7.5, 7.7, 7.55, 7.65]), setOf([8.5, 8.6, 8.4, 8.55, 8.45])];
  const plan = planned({ measured: sets });

  it('takes their speed, and the scatter within each set and not between them', () => {
    expect(plan.nominalSpeed_m_s).toBe(30);
    expect(plan.spreadOrigin).toBe('measured');
    expect(plan.spread_m).toBeGreaterThan(0.3);
    expect(plan.spread_m).toBeLessThan(0.7);
    expect(plan.sentence).toContain('measured from 10 stops');
    expect(plan.runsPerSetRange.low).toBeLessThan(plan.runsPerSetRange.high);
    expect(plan.warnings.join('\n')).toContain('So few stops tell the spread only roughly');
    expect(plan.shows_m).toBeLessThanOrEqual(plan.resolution_m);
  });

  it('takes more stops for less, and a word on the spread before what was measured', () => {
    expect(planned({ measured: sets, resolution: 0.4 }).runsPerSet).toBeGreaterThan(plan.runsPerSet);
    const stated = planned({ measured: sets, spread: 0.2 });
    expect(stated).toMatchObject({ spreadOrigin: 'stated', spread_m: 0.2, runsPerSet: 4 });
  });

  it('does not ask for what nobody drives: it says what a long day shows', () => {
    const fine = planned({ measured: sets, resolution: 0.03 });
    expect(fine.runsPerSet).toBe(30);
    expect(fine.shows_m).toBeGreaterThan(fine.resolution_m);
    expect(fine.sentence).toMatch(
      /^To see a difference of 0\.0984 ft from 67\.1 mph it would take \d{4} stops .*; 30 with each, .*, show \d.* ft:/,
    );
    expect(fine.warnings[0]).toContain('too small to be seen at this spread');
  });

  it('has two sets without a repeat, and says what passes for the change then', () => {
    const bare = planned({ measured: sets, withRepeat: false });
    expect(bare.withRepeat).toBe(false);
    expect([...new Set(bare.runs.map(({ set }) => set))]).toEqual(['before', 'after']);
    expect(bare.steps.join('\n')).not.toContain('Fit the old parts again');
    expect(bare.warnings.join('\n')).toContain('Without the old set-up once more');
  });

  it('has no spread from one stop', () => {
    expect(planned({ measured: [setOf([8])] }).spreadOrigin).toBe('assumed');
  });
});

describe('a plan for a job', () => {
  const job = jobWith(
    'test: { resolution: 5 ft, startTemperatureLow: 150 °F, startTemperatureHigh: 212 °F }',
  );
  const input = { job, setUps: ['as-found', 'front-kit'], draws: 4 };
  const plan = planned(input);

  it('takes resolution, speed and window from it', () => {
    expect(plan.resolution_m).toBeCloseTo(5 * foot, 12);
    expect(plan.nominalSpeed_m_s).toBeCloseTo(26.8224, 9);
    expect(plan.coolDown.startTemperature_C.high).toBeCloseTo(100, 9);
  });

  it('cools by the heat model of the set-up that takes longest', () => {
    const { interval_s, origin, reason } = plan.coolDown;
    expect(origin).toBe('model');
    expect(interval_s.value).toBeGreaterThan(60);
    expect(interval_s.low).toBeLessThanOrEqual(interval_s.value);
    expect(reason).toMatch(
      /^By the heat model, the hottest rotor of "[a-z-]+", which takes longest, is back at 212 °F .* s after the stop before, driving on without the brakes; a thermometer/,
    );
    const alone = ['as-found', 'front-kit'].map(
      (setUp) => planned({ ...input, setUps: [setUp] }).coolDown.interval_s.value,
    );
    expect(interval_s.value).toBe(Math.max(...alone));
  });

  it('waits longer for a cooler start and from a higher speed', () => {
    const of = (more: Partial<PlanTestInput>): number =>
      planned({ ...input, ...more }).coolDown.interval_s.value;
    const cool = of({ startTemperature: { low: 40, high: 70 } });
    expect(cool).toBeGreaterThan(plan.coolDown.interval_s.value);
    expect(of({ nominalSpeed: 40 })).toBeGreaterThan(plan.coolDown.interval_s.value);
  });

  it('says where the rotors never get so warm, and where they never cool', () => {
    const warm = planned({ ...input, startTemperature: { low: 400, high: 500 } });
    expect(warm.warnings.join('\n')).toMatch(/the rotors of "as-found" never start a stop as warm as 752 °F/);
    const cold = planned({ ...input, startTemperature: { low: -10, high: 5 } });
    expect(cold.warnings.join('\n')).toContain('do not cool to the window within an hour');
    expect(() => planTest({ ...input, startTemperature: { low: 90, high: 50 } })).toThrow('hottest start');
  });
});
