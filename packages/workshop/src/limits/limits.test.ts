import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../job/example-job.testing.ts';
import type { Job } from '../job/job.ts';
import { readJob } from '../job/reading/read-job.ts';
import { predict } from '../predict/predict.ts';
import { limitsReport } from '../results/limits-report.ts';
import { limits, limitsFrom } from './limits.ts';

/** The example with some things changed; fails where a text to change is not there. */
function jobWith(...changes: readonly (readonly [from: string, to: string])[]): Job {
  const text = changes.reduce((changed, [from, to]) => {
    if (!changed.includes(from)) throw new Error(`no "${from}" in the example`);
    return changed.replace(from, to);
  }, exampleJobText);
  const reading = readJob(text, { file: 'job.yaml' });
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.job;
}

const options = { draws: 40, setUps: ['as-found', 'front-kit'] };
const job = jobWith();
const report = limits(job, options);
const [asFound, kit] = report.setUps;
const [change] = report.differences;

describe('the limits of a job', () => {
  it('are what their published schema says', () => {
    expect(limitsReport.parse(JSON.parse(JSON.stringify(report)))).toEqual(report);
  });

  it('say in one sentence what holds the car back and where it stops, and the rest below', () => {
    expect(report.sentence).toMatch(/^As found: .* holds the car back.*; it stops from \S+ \S+ in [^.]*\.$/);
    expect(report.sentence).toBe(asFound?.sentence);
    expect(asFound?.details).toMatch(/^The tires become the limit at .* on the pedal/);
  });

  it('stand on the same prediction as predict', () => {
    const prediction = predict(job, options);
    expect(limitsFrom(job, options, prediction)).toEqual(report);
    expect(asFound?.distance_m).toEqual(prediction.setUps[0]?.distance_m);
    expect(kit?.pedalForceAtLimit_N).toEqual(prediction.setUps[1]?.pedalForceAtLimit_N);
  });

  it('split each stop without losing a foot, every line with its interval', () => {
    for (const { budget } of report.setUps) {
      const sum = budget.shares.reduce(
        (total, { distance_m }) => total + distance_m.value,
        budget.ideal_m.value,
      );
      expect(Math.abs(sum - budget.total_m.value)).toBeLessThan(1e-9);
      expect(budget.draws).toBeGreaterThan(30);
      for (const { value, low, high } of [
        budget.ideal_m,
        ...budget.shares.map(({ distance_m }) => distance_m),
      ]) {
        expect(low).toBeLessThan(high);
        expect(low).toBeLessThanOrEqual(value);
        expect(high).toBeGreaterThanOrEqual(value);
      }
    }
  });

  it('split the difference over the parts that differ, with intervals', () => {
    const sum = change?.byPart.reduce((total, { distance_m }) => total + distance_m.value, 0) ?? NaN;
    expect(change?.byPart.map(({ part }) => part)).toEqual([
      'frontCaliper',
      'frontPad',
      'frontRotor',
      'frontHose',
    ]);
    expect(Math.abs(sum - (change?.distance_m.value ?? NaN))).toBeLessThan(1e-9);
    const widths = change?.byPart.map(({ distance_m: { low, high } }) => high - low) ?? [];
    expect(Math.min(...widths)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...widths)).toBeGreaterThan(0);
  });

  it('print what pairing does: what both share drops out of the difference', () => {
    const { pairedVariance_m2 = NaN, unpairedVariance_m2 = NaN, sentence = '' } = change?.pairing ?? {};
    expect(pairedVariance_m2).toBeGreaterThan(0);
    expect(unpairedVariance_m2).toBeGreaterThan(20 * pairedVariance_m2);
    expect(sentence).toMatch(/drawn once for both.*\d ft; with draws of their own it would be \d+ ft/);
  });
});

describe('what to measure next', () => {
  it('is the grip for one stop, and the pads for the difference, which the grip hardly moves', () => {
    expect(asFound?.measureNext[0]).toMatchObject({
      path: 'parts.tires.peakFriction',
      of: 'Road tires',
      origin: 'assumed',
    });
    expect(change?.measureNext[0]?.path).toMatch(/pad\.friction$/);
    expect(change?.measureNext[0]?.sentence).toMatch(
      /^Measure the pad friction of ".*ads": it would narrow .* down to /,
    );
  });

  it('narrows the interval by what it says, the best first', () => {
    for (const { measureNext } of [...report.setUps, ...report.differences]) {
      const removed = measureNext.map(({ intervalRemovedShare }) => intervalRemovedShare);
      expect(removed).toEqual(removed.toSorted((a, b) => b - a));
      expect(Math.min(1, ...removed)).toBeGreaterThanOrEqual(0.1);
      for (const { now_m, then_m, intervalRemovedShare } of measureNext) {
        const ratio = (then_m.high - then_m.low) / (now_m.high - now_m.low);
        expect(ratio).toBeCloseTo(1 - intervalRemovedShare, 9);
        expect(then_m.value).toBe(now_m.value);
      }
    }
  });

  it('is borne out: with the grip stated as measured the range gets as narrow as was promised, and from then on only a second measurement is named', () => {
    const before = limits(job, { draws: 400, setUps: ['as-found'] }).setUps[0];
    const promised = before?.measureNext[0];
    const stated = 'class: sportyRoad, size: 205/50 R16';
    const { value } =
      job.parts['tires']?.kind === 'tire' ? job.parts['tires'].facts.peakFriction : { value: NaN };
    const measured = jobWith([stated, `${stated}, peakFriction: { value: ${value}, origin: measured }`]);
    const after = limits(measured, { draws: 400, setUps: ['as-found'] }).setUps[0];
    const width = ({ low, high }: { low: number; high: number }): number => high - low;
    const kept = width(after!.distance_m) / width(before!.distance_m);
    expect(promised?.path).toBe('parts.tires.peakFriction');
    expect(Math.abs(kept - (1 - promised!.intervalRemovedShare))).toBeLessThan(0.06);
    const again = after?.measureNext.find(({ path }) => path === 'parts.tires.peakFriction');
    expect(again === undefined || again.again).toBe(true);
    expect(again?.sentence ?? ' again and take the mean').toContain(' again and take the mean');
  });

  it('has indices for numbers, the rest and parts: first-order ones sum to about one where little acts together', () => {
    const { numbers = [], rest, parts = [], rows } = asFound?.sensitivity ?? {};
    const sum = numbers.reduce((total, { first }) => total + first.value, rest?.first.value ?? NaN);
    expect(rows).toBe(256);
    expect(Math.abs(sum - 1)).toBeLessThan(0.15);
    expect(rest?.total.value).toBeLessThan(0.15);
    expect(numbers[0]?.path).toBe('parts.tires.peakFriction');
    expect(parts[0]).toMatchObject({ path: 'parts.tires', title: 'Road tires' });
    expect(parts[0]?.total.value).toBeGreaterThan(numbers[0]!.total.value - 0.05);
  });
});

describe('what holds a car back', () => {
  const limitOf = (options_: { readonly pedalForce?: number }, ...changes: [string, string][]) =>
    limits(jobWith(...changes), { draws: 20, setUps: ['as-found'], ...options_ }).setUps[0]!;

  it('is the pedal effort where a harder push would reach the tires', () => {
    const light = limitOf({ pedalForce: 60 });
    expect(light.limit).toBe('pedal effort');
    expect(light.tiresLimitShare).toBeLessThan(0.5);
    expect(light.sentence).toMatch(/pedal effort holds the car back.*a harder push does/);
    expect(light.details).toMatch(/^The tires become the limit at .* on the pedal.*; the stop is asked at/);
  });

  it('is heat where hot pads are what makes the brakes too weak', () => {
    const hot = limitOf({ pedalForce: 300 }, ['startTemperature: 200 °F', 'startTemperature: 1100 °F']);
    expect(hot.limit).toBe('heat');
    expect(hot.sentence).toContain('heat holds the car back: hot pads make the brakes too weak');
  });

  it('is the brake torque where no foot reaches the tires', () => {
    const weak = limitOf({}, ['booster: booster', 'booster: none'], ['pistons: [54 mm]', 'pistons: [25 mm]']);
    expect([weak.limit, weak.pedalForceAtLimit_N]).toEqual(['brake torque', null]);
    expect(weak.sentence).toContain('not even 225 lbf on the pedal reaches the tires');
  });

  it('is the pedal travel where the pedal is on the floor, and the danger comes first', () => {
    const soft = jobWith(['class: dot4', 'class: dot4, trappedAir: 60 cm³']);
    const { sentence, setUps } = limits(soft, { draws: 20, setUps: ['as-found'] });
    expect(setUps[0]?.limit).toBe('pedal travel');
    expect(sentence).toMatch(/^DANGER: the pedal reaches the floor.*pedal travel holds the car back/);
  });
});
