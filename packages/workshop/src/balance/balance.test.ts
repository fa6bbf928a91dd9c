import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../job/example-job.testing.ts';
import type { Job } from '../job/job.ts';
import { readJob } from '../job/reading/read-job.ts';
import { balanceReport } from '../results/balance-report.ts';
import type { BalanceReport } from '../results/balance-report.ts';
import { balance } from './balance.ts';

type Change = readonly [from: string, to: string];

function jobWith(...changes: readonly Change[]): Job {
  const text = changes.reduce(
    (changed, [from, to]) => {
      if (!changed.includes(from)) throw new Error(`no "${from}" in the example`);
      return changed.replace(from, to);
    },
    exampleJobText.replace('repeatedStops: { count: 8,', 'repeatedStops: { count: 2,'),
  );
  const reading = readJob(text, { file: 'job.yaml' });
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.job;
}

const few = { draws: 40, units: 'metric' } as const;
const wheelbase = '  wheelbase: 96 in\n';
const codes = ({ warnings }: BalanceReport) => warnings.map(({ code }) => code);
const reportOf = (changes: readonly Change[], setUps: readonly string[]) =>
  balance(jobWith(...changes), { ...few, setUps });

describe('a balance report', () => {
  const report = balance(jobWith(), few);

  it('has the published shape, and the answer in its first sentence', () => {
    expect(balanceReport.parse(report)).toEqual(report);
    expect(report.sentence).toMatch(
      /^The front wheels lock first with "As found"(?: \(\d+ % of the draws\))?,? (?:and )?"Front kit"/,
    );
    expect(report.annexSentence).toContain('a yardstick only since the car has ABS');
    expect(report.annexSentence).toContain('both rules kept as tested and laden');
  });

  it('looks at the car as tested and laden, or at one of them', () => {
    expect(report.setUps[0]?.states.map(({ state }) => state)).toEqual(['as-tested', 'laden']);
    const laden = balance(jobWith(), { ...few, states: ['laden'], setUps: ['as-found'] });
    const [first] = laden.setUps[0]!.states;
    expect(first).toMatchObject({ state: 'laden', mass_kg: { value: expect.closeTo(1322, 0) } });
    expect(laden.sentence).toMatch(/^As found: the front wheels lock first, at \d.* laden, in every draw\.$/);
    expect(laden.sentence).not.toContain('as tested');
  });

  it('has curves of one length, with the adhesion inside its interval and the limits where they hold', () => {
    for (const { curves } of report.setUps.flatMap(({ states }) => states)) {
      const lengths = Object.values(curves).map(({ length }) => length);
      expect(new Set(lengths).size).toBe(1);
      curves.frontAdhesion.forEach((value, index) => {
        if (value === null) return;
        expect(curves.frontAdhesionLow[index]).toBeLessThanOrEqual(value);
        expect(curves.frontAdhesionHigh[index]).toBeGreaterThanOrEqual(value);
      });
      const half = curves.deceleration_g.findIndex((z) => Math.abs(z - 0.45) < 1e-9);
      expect(curves.annexFiveLimit[half]).toBeCloseTo(0.7, 9);
      expect(curves.torqueWheelLimit[half]).toBeCloseTo(0.5, 9);
      expect(curves.annexFiveLimit.at(-1)).toBeNull();
    }
  });

  it('leaves no difference between two set-ups of the same parts', () => {
    const twin = reportOf(
      [['runs:\n', '  twin: { title: Twin, basedOn: as-found }\n\nruns:\n']],
      ['as-found', 'twin'],
    );
    expect(twin.differences[0]?.states[0]?.frontForceShare).toEqual({ value: 0, low: 0, high: 0 });
    expect(twin.differences[0]?.verdict).toContain('leaves the balance as it is');
  });

  it('sets a set-up against the first', () => {
    const { differences } = balance(jobWith(), { ...few, setUps: ['as-found', 'front-kit'] });
    expect(differences[0]).toMatchObject({ id: 'front-kit', against: 'as-found' });
    expect(differences[0]?.verdict).toMatch(/The front kit moves the share of brake force at the front/);
  });
});

describe('a rear-first lock', () => {
  const strongRear: Change = [
    'title: Rear calipers, type: floating, pistons: [34 mm]',
    'title: Rear calipers, type: floating, pistons: [50 mm]',
  ];
  const noValve: Change = ['rearValve: valve', 'rearValve: none'];

  it('is a danger before anything else, and the rule of Annex 5 says the same', () => {
    const report = reportOf([strongRear, noValve], ['as-found']);
    expect(report.sentence).toMatch(
      /^DANGER: the rear wheels lock first with "As found" as tested and laden\. /,
    );
    expect(report.annexSentence).toContain('broken, the rear uses more friction than the front from');
    expect(report.warnings[0]).toMatchObject({ code: 'rear-locks-first', severity: 'danger' });
    const [state] = report.setUps[0]!.states;
    expect(state?.annexFive.rearBelowFront).toMatchObject({ kept: false, brokenFrom_g: expect.any(Number) });
    expect(state?.rearFirst.share).toBe(1);
  });

  it('that only the laden car has is told as such', () => {
    const report = reportOf(
      [
        [
          wheelbase,
          `${wheelbase}  laden: { mass: 1500 kg, frontLoadShare: 70 %, centerOfGravityHeight: 30 in }\n`,
        ],
      ],
      ['as-found'],
    );
    expect(report.sentence).toMatch(/^DANGER: the rear wheels lock first with "As found" laden\. /);
    expect(report.warnings[0]?.message).toContain(', laden with ABS failed');
  });

  it('that takes motors on the rear wheels is found, and the share is said to be one', () => {
    const report = reportOf(
      [[wheelbase, `${wheelbase}  regeneration: { share: 30 % }\n  frontDriveShare: 0 %\n`]],
      ['as-found'],
    );
    expect(report.setUps[0]?.states[0]?.rearFirst.central).toMatchObject({ byDriveAlone: true });
    expect(codes(report)).toContain('drive-by-share');
  });
});

describe('the parking brake', () => {
  const drum =
    '  drum: { kind: drum, title: Drums, type: simplex, diameter: 9 in, width: 45 mm, cylinderBore: 19 mm }\n';
  const hand =
    '  hand: { kind: parking-brake, title: Hand brake, type: caliper, clampRatio: 20, leverRatio: 7 }\n';
  const parts: Change = ['parts:\n', `parts:\n${drum}${hand}`];
  const found: Change = ['    rearHose: stock-hose\n', '    rearHose: stock-hose\n    parkingBrake: hand\n'];
  const drums: Change = [
    'runs:\n',
    '  drums: { title: Drums, basedOn: as-found, rearDrum: drum }\n\nruns:\n',
  ];

  it('is held against a grade of 20 % with the force that the standard allows, in the heaviest state', () => {
    const [setUp] = reportOf([parts, found], ['as-found']).setUps;
    expect(setUp?.states[1]?.parking).toMatchObject({
      operatedBy: 'hand',
      force_N: 400,
      holdsTwentyPercent: true,
    });
    expect(setUp?.parkingSentence).toMatch(
      /^Parking brake: holds the 20 % grade of FMVSS 135 laden with 400 N by hand/,
    );
  });

  it('that is too weak is a caution', () => {
    const weak: Change = [parts[0], parts[1].replace('clampRatio: 20', 'clampRatio: 3')];
    const report = reportOf([weak, found], ['as-found']);
    expect(codes(report)).toContain('parking-weak');
    expect(report.setUps[0]?.parkingSentence).toContain('does NOT hold');
  });

  it('is unknown once the rear brakes change under it, and somebody must look', () => {
    const report = reportOf([parts, found, drums], ['as-found', 'drums']);
    expect(report.setUps[1]?.states[0]?.parking).toBeNull();
    expect(codes(report)).toContain('parking-unknown');
  });

  it('in the rear drums has their own factor at the friction of cold linings', () => {
    const shoes: Change = [
      'parts:\n',
      `parts:\n${drum}  shoes: { kind: parking-brake, title: Hand brake, type: drum, leverRatio: 6, cableEfficiency: 80 %, shoeLeverRatio: 4 }\n`,
    ];
    const drumsWithBrake: Change = [
      'runs:\n',
      '  drums: { title: Drums, basedOn: as-found, rearDrum: drum, parkingBrake: shoes }\n\nruns:\n',
    ];
    const [setUp] = reportOf([shoes, drumsWithBrake], ['drums']).setUps;
    const { parking, mass_kg } = setUp!.states[0]!;
    // By hand: C* at 0.36 of a simplex of 2.0 at 0.38 is 1.83; cable 400 × 6 × 0.8 / 2 = 960 N, × 4 on each shoe.
    const torque = 1.834 * 960 * 4 * 0.1143;
    const sine = (2 * torque) / (0.97 * (0.2032 + 0.1025) * mass_kg.value * 9.80665);
    expect(parking?.gradeByBrake.value).toBeCloseTo(Math.tan(Math.asin(sine)), 2);
  });
});
