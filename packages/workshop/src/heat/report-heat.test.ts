import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../job/example-job.testing.ts';
import type { Job } from '../job/job.ts';
import { readJob } from '../job/reading/read-job.ts';
import { heatReport } from '../results/heat-report.ts';
import { reportHeat } from './report-heat.ts';

function jobWith(...changes: readonly (readonly [from: string, to: string])[]): Job {
  const text = changes.reduce((changed, [from, to]) => {
    if (!changed.includes(from)) throw new Error(`no "${from}" in the example`);
    return changed.replace(from, to);
  }, exampleJobText);
  const reading = readJob(text, { file: 'job.yaml' });
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.job;
}

const job = jobWith();
const hard = { schedule: { kind: 'stops', count: 15, interval: 30 }, speed: 42, draws: 30 } as const;
const report = reportHeat(job, hard);
const [asFound, kit] = report.setUps;

describe('a heat report', () => {
  it('is what its published schema says', () => {
    expect(heatReport.parse(JSON.parse(JSON.stringify(report)))).toEqual(report);
  });

  it('begins with what gets too hot first, and in which stop', () => {
    expect(report.sentence).toMatch(
      /^Too hot first in 15 stops from 94 mph every 30 s: "As found" the front pads in stop \d+ \(\d+ to \d+\); "Front kit" /,
    );
    expect(asFound?.sentence).toMatch(
      /^As found: the front pads get too hot first \(they fade at \d+ °F\) in stop \d+/,
    );
  });

  it('has everything inside its interval, and less margin in the car as found than with larger rotors', () => {
    for (const { limits, front } of report.setUps) {
      for (const { value, low, high } of [
        front.interface_C,
        front.fluid_C,
        ...limits.map((one) => one.highest_C),
      ]) {
        expect(low).toBeLessThanOrEqual(value);
        expect(high).toBeGreaterThanOrEqual(value);
      }
    }
    expect(asFound?.front.interface_C.value).toBeGreaterThan(kit?.front.interface_C.value ?? Infinity);
    expect(asFound?.headroom?.stops.value).toBeLessThanOrEqual(kit?.headroom?.stops.value ?? 0);
  });

  it('calls a limit passed exactly where the highest is past it', () => {
    for (const { highest_C, limit_C, margin_K, passedInStop } of report.setUps.flatMap(
      ({ limits }) => limits,
    )) {
      if (limit_C === null || margin_K === null) continue;
      expect(margin_K.value).toBeCloseTo(limit_C.value - highest_C.value, 6);
      expect(passedInStop !== null).toBe(highest_C.value > limit_C.value);
    }
  });

  it('is the same for the same seed and another for another', () => {
    const few = { ...hard, draws: 20, setUps: ['as-found'] };
    expect(reportHeat(job, { ...few, seed: 4 })).toEqual(reportHeat(job, { ...few, seed: 4 }));
    expect(reportHeat(job, { ...few, seed: 5 }).setUps[0]?.front.fluid_C).not.toEqual(
      reportHeat(job, { ...few, seed: 4 }).setUps[0]?.front.fluid_C,
    );
  });

  it('draws a course whose peaks are those of the stops', () => {
    const course = asFound?.course;
    expect(course?.time_s.length).toBeLessThan(420);
    expect(Math.max(...(course?.front.interface_C ?? []))).toBeCloseTo(
      asFound?.front.interface_C.value ?? 0,
      1,
    );
  });

  it('comes in metric units too', () => {
    const metric = reportHeat(job, { ...hard, draws: 20, setUps: ['as-found'], units: 'metric' });
    expect(metric.sentence).toMatch(/stops from 151 km\/h every 30 s/);
    expect(metric.sentence).not.toMatch(/°F|mph/);
  });

  it('refuses a set-up that the job does not have', () => {
    expect(() => reportHeat(job, { setUps: ['front-kti'] })).toThrow('the job has no set-up "front-kti"');
  });
});

describe('fluid', () => {
  const fluidOf = (text: string, draws = 20) =>
    reportHeat(jobWith(['title: Fluid as found, class: dot4', `title: Fluid as found, ${text}`]), {
      ...hard,
      draws,
      setUps: ['as-found'],
    });

  it('boils earlier the older it is, between its dry and its wet figure until 3.7 % of water', () => {
    const boils = ['0 yr', '1 yr', '3 years', '8 years'].map(
      (age) => fluidOf(`class: dot4, age: ${age}`).setUps[0]!.fluid.boiling_C.value,
    );
    expect(boils).toEqual(boils.toSorted((one, other) => other - one));
    expect(boils[0]).toBe(230);
    expect(boils[1]).toBeGreaterThan(155);
  });

  it('that boils is a danger in the first word', () => {
    const old = fluidOf('class: dot3, age: 9 years', 30);
    expect(old.sentence).toMatch(/^DANGER: As found: /);
    expect(old.warnings[0]).toMatchObject({ code: 'fluid-boils', severity: 'danger', about: 'as-found' });
    expect(old.warnings[0]?.message).toContain('the pedal then goes to the floor');
  });

  it('stays cooler behind phenolic pistons', () => {
    const peak = (pistons: string) =>
      reportHeat(jobWith(['pistons: [54 mm]', `pistons: [54 mm], ${pistons}`]), {
        ...hard,
        draws: 20,
        setUps: ['as-found'],
      }).setUps[0]!.front.fluid_C.value;
    expect(peak('pistonMaterial: phenolic')).toBeLessThan(peak('pistonMaterial: steel') - 3);
    expect(peak('pistonMaterial: steel')).toBeLessThan(peak('pistonMaterial: aluminum'));
  });
});

describe('schedules', () => {
  const few = { draws: 20, setUps: ['as-found'] } as const;
  it.each([
    ['heating-snubs', 15, 'the heating snubs of FMVSS 135'],
    ['hot-stops', 18, 'the hot stops of FMVSS 135'],
    ['bed-in', 15, 'a common bed-in'],
    ['descent', 1, 'a descent of 1970 ft at 8 %'],
  ] as const)('%s has its stops and its name', (kind, stops, words) => {
    const found = reportHeat(job, { ...few, schedule: { kind } });
    expect(found.setUps[0]?.stops).toHaveLength(stops);
    expect(found.scheduleText).toContain(words);
    expect(found.sentence).toContain(words);
  });

  it('laps are driven as often as asked, and say where they ask too much', () => {
    const points = [{ from: 45, to: 18, next: 20, deceleration: 13 }];
    const found = reportHeat(job, { ...few, schedule: { kind: 'laps', points, count: 3 } });
    expect(found.setUps[0]?.stops).toHaveLength(3);
    expect(found.warnings.some(({ code }) => code === 'deceleration-out-of-reach')).toBe(true);
  });

  it('too quick for a car are marked', () => {
    const found = reportHeat(job, { ...few, schedule: { kind: 'stops', count: 3, interval: 6 } });
    expect(found.warnings.some(({ code }) => code === 'interval-too-short')).toBe(true);
  });

  it('never claim that nothing gets too hot where nobody has stated fade', () => {
    const single = jobWith([
      'title: Stock front pads, class: road,',
      'title: Stock front pads, class: road, friction: 0.38,',
    ]);
    const found = reportHeat(single, { ...hard, ...few });
    expect(found.sentence).not.toContain('nothing gets too hot');
    expect(found.warnings.some(({ code }) => code === 'fade-not-stated')).toBe(true);
  });
});
