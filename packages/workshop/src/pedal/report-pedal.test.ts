import { pedalTravel } from '@standstill/braking';
import { randomStream } from '@standstill/numerics';
import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../job/example-job.testing.ts';
import type { Job } from '../job/job.ts';
import { readJob } from '../job/reading/read-job.ts';
import { pedalReport } from '../results/pedal-report.ts';
import type { PedalReport } from '../results/pedal-report.ts';
import { settle } from '../settle/settle.ts';
import { PedalPointsError } from './measured/pedal-points-error.ts';
import { readPedalPoints } from './measured/read-pedal-points.ts';
import { inStateOf } from './measured/usable-points.ts';
import { reportPedal } from './report-pedal.ts';
import type { ReportPedalOptions } from './report-pedal.ts';

type Change = readonly [from: string, to: string];

/** The example with some things changed; fails where a text to change is not there. */
function jobWith(...changes: readonly Change[]): Job {
  const text = changes.reduce((changed, [from, to]) => {
    if (!changed.includes(from)) throw new Error(`no "${from}" in the example`);
    return changed.replace(from, to);
  }, exampleJobText);
  const reading = readJob(text, { file: 'job.yaml' });
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.job;
}

const few = { draws: 60 } as const;
const about = (report: PedalReport, code: string) => report.warnings.filter((one) => one.code === code);

/** Pushes as the job's own pedal would answer them with other air in it, read with some noise. */
function madePoints(job: Job, forces: readonly number[], trappedAir: number, noise: number): string {
  const { setUp } = settle(job, 'as-found');
  const made = inStateOf({ ...setUp, fluid: { ...setUp.fluid, trappedAir } }, 'off');
  const stream = randomStream(1, 'made points');
  return forces
    .map((pedalForce) => {
      const travel = pedalTravel({ setUp: made, pedalForce }).travel + noise * stream.normal();
      return `${pedalForce} N ${(1000 * travel).toFixed(2)} mm`;
    })
    .join('; ');
}

function measured(
  text: string,
  engine: 'running' | 'off' = 'off',
): NonNullable<ReportPedalOptions['measured']> {
  const reading = readPedalPoints(text, null);
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return { engine, points: reading.points };
}

const light = [20, 30, 45, 70, 110, 180, 280, 400];

describe('the pedal report', () => {
  const job = jobWith();
  const report = reportPedal(job, few);

  it('has the published shape, the answer first, and parts that sum to the travel', () => {
    expect(pedalReport.safeParse(report).error).toBeUndefined();
    expect(report.sentence).toMatch(
      /^At 90 lbf the pedal goes down .* in, \d+ % of its travel .*; with .* lost /,
    );
    const sum = report.parts.reduce((total, { travel_m }) => total + travel_m.value, 0);
    expect(sum).toBeCloseTo(report.push.travel_m.value, 12);
    for (const { travel_m } of report.curve) expect(travel_m.low).toBeLessThanOrEqual(travel_m.high);
    expect(report.curve.at(-1)?.travel_m).toEqual(report.push.travel_m);
  });

  it('speaks metric where asked, and says the same numbers', () => {
    const metric = reportPedal(job, { ...few, units: 'metric' });
    expect(metric.sentence).toMatch(/ mm, /);
    expect(metric.push).toEqual(report.push);
  });

  it('says of both circuits what is left, and that the single strokes are assumed', () => {
    expect(report.circuitsLost.map(({ circuit }) => circuit)).toEqual(['front', 'rear']);
    for (const lost of report.circuitsLost) {
      expect(lost.strokesAssumed).toBe(true);
      expect(lost.extraTravel_m.value).toBeGreaterThan(0);
      expect(lost.deceleration_m_s2.value).toBeLessThan(9.81);
    }
    expect(report.circuitsLost[0]?.frontLinePressure_Pa.value).toBe(0);
    expect(report.circuitsLost[1]?.rearLinePressure_Pa.value).toBe(0);
  });

  it('takes stated strokes, and warns of a circuit whose loss takes the pedal to the floor', () => {
    const longer = jobWith([
      'title: Master cylinder, bore: 7/8 in',
      'title: Master cylinder, bore: 7/8 in, primaryStroke: 24 mm, secondaryStroke: 14 mm, primaryFeeds: rear',
    ]);
    const stated = reportPedal(longer, few);
    const [front, rear] = stated.circuitsLost;
    expect([front?.strokesAssumed, rear?.strokesAssumed]).toEqual([false, false]);
    expect(rear?.travel_m.value).toBeGreaterThan(front?.travel_m.value ?? Infinity);
    const short = jobWith(
      ['title: Pedal, ratio: 4.1', 'title: Pedal, ratio: 4.1, availableTravel: 80 mm'],
      [
        'title: Master cylinder, bore: 7/8 in',
        'title: Master cylinder, bore: 7/8 in, primaryStroke: 24 mm, secondaryStroke: 14 mm',
      ],
    );
    const danger = reportPedal(short, few);
    expect(about(danger, 'circuit-lost-bottoms').map(({ severity }) => severity)).toContain('danger');
    expect(danger.sentence).toMatch(/either circuit lost it is at the floor/);
  });

  it('looks at both diagonals, and at two cylinders with a balance bar', () => {
    const diagonal = reportPedal(jobWith(['circuitSplit: front-rear', 'circuitSplit: diagonal']), few);
    expect(diagonal.circuitsLost.map(({ circuit }) => circuit)).toEqual([
      'first-diagonal',
      'second-diagonal',
    ]);
    const bar = jobWith([
      'title: Master cylinder, bore: 7/8 in',
      'title: Two cylinders, type: balance-bar, frontBore: 20 mm, rearBore: 19 mm',
    ]);
    const { circuitsLost, warnings } = reportPedal(bar, few);
    expect(warnings.map(({ code }) => code)).toContain('balance-bar-swing');
    expect(circuitsLost.map(({ circuit, strokesAssumed }) => [circuit, strokesAssumed])).toEqual([
      ['front', false],
      ['rear', false],
    ]);
  });

  it('runs out of vacuum push by push, and has no pushes without a vacuum booster', () => {
    const vacuum = (report.pushesWithoutEngine ?? []).map(({ vacuum_Pa }) => vacuum_Pa.value);
    expect(vacuum).toHaveLength(6);
    expect(vacuum).toEqual(vacuum.toSorted((a, b) => b - a));
    const hydraulic = jobWith([
      'type: vacuum, gain: 4.5, diaphragmDiameter: 9 in',
      'type: hydraulic, gain: 5, greatestAssist: 5 kN',
    ]);
    expect(about(reportPedal(hydraulic, few), 'hydraulic-reserve-not-modeled')).toHaveLength(1);
    const bare = reportPedal(jobWith(['booster: booster', 'booster: none']), few);
    expect([bare.pushesWithoutEngine, bare.assistLost, bare.boosterRunOut_N]).toEqual([null, null, null]);
  });

  it('knows more of the knock-back with an axle that floats', () => {
    const floating = reportPedal(
      jobWith(['  wheelbase: 96 in', '  wheelbase: 96 in\n  hubs: { rearAxleFloat: 0.6 mm }']),
      few,
    );
    expect(floating.knockBack_m.value).toBeGreaterThan(report.knockBack_m.value + 0.003);
  });

  it('warns of a reservoir that worn pads empty', () => {
    const small = jobWith([
      'title: Master cylinder, bore: 7/8 in',
      'title: Master cylinder, bore: 7/8 in, reservoirVolume: 40 cm³',
    ]);
    expect(about(reportPedal(small, few), 'reservoir-small')).toHaveLength(1);
    expect(about(report, 'reservoir-small')).toHaveLength(0);
  });

  it('gives the same answer to the same seed', () => {
    expect(reportPedal(job, few)).toEqual(report);
    expect(reportPedal(job, { ...few, seed: 2 }).push).not.toEqual(report.push);
  });
});

describe('a measured pedal', () => {
  const job = jobWith();

  it('finds the air that was put in, says so first and as a danger', () => {
    const points = measured(madePoints(job, light, 8e-6, 0.0005));
    const report = reportPedal(job, { ...few, measured: points });
    const found = report.measured;
    expect(found?.airTold).toBe(true);
    expect(found?.air_m3.low).toBeLessThan(8e-6);
    expect(found?.air_m3.high).toBeGreaterThan(8e-6);
    expect(report.sentence).toMatch(/^The measured pedal has \d.* cm³ of trapped air in it/);
    expect(about(report, 'air-in-system')).toHaveLength(1);
    const notes = about(report, 'cannot-be-told-apart').map(({ message }) => message);
    expect(notes.join()).toMatch(/plug.*Never clamp a hose/);
  });

  it('says that hard pushes with the engine running tell nothing of the air', () => {
    const report = reportPedal(job, {
      ...few,
      measured: measured('180 N 45 mm; 270 N 49 mm; 360 N 52 mm; 450 N 55 mm', 'running'),
    });
    expect(report.measured?.airTold).toBe(false);
    expect(report.sentence).toMatch(/can't be told from free play/);
    expect(about(report, 'air-in-system')).toHaveLength(0);
  });

  it('narrows no hose, pad or caliper much, and says so', () => {
    const report = reportPedal(job, { ...few, measured: measured(madePoints(job, light, 2e-6, 0)) });
    const parts = report.measured?.split ?? [];
    for (const { part, narrowing } of parts.filter(({ part: name }) => /Hoses|Pads/.test(name)))
      expect([part, narrowing > 0.8]).toEqual([part, true]);
  });

  it('leaves out pushes below push-out and at the floor, and refuses where too few are left', () => {
    const floor = `${madePoints(job, light, 8e-6, 0)}; 500 N 200 mm`;
    const { measured: found, warnings } = reportPedal(job, { ...few, measured: measured(floor) });
    expect(found?.points.at(-1)?.used).toBe(false);
    expect(warnings.map(({ code }) => code)).toContain('pedal-points-left-out');
    const faint = measured('1 N 5 mm; 2 N 6 mm; 3 N 7 mm; 200 N 50 mm; 300 N 55 mm');
    expect(() => reportPedal(job, { ...few, measured: faint })).toThrow(PedalPointsError);
  });

  it('takes the points of the job, the last test of the set-up', () => {
    const points = madePoints(job, light, 6e-6, 0)
      .split('; ')
      .map((point) => {
        const [force, travel] = point.split(/(?<= N) /);
        return `      - { force: ${force}, travel: ${travel} }`;
      });
    const test = `pedalPoints:\n  - setUp: as-found\n    engine: off\n    points:\n${points.join('\n')}\n\nruns:`;
    const tested = jobWith(['runs:', test.replace('engine: off', 'engine: "off"')]);
    const { measured: found } = reportPedal(tested, few);
    expect(found?.air_m3.value).toBeGreaterThan(5e-6);
    expect(reportPedal(tested, { ...few, setUp: 'front-kit' }).measured).toBeNull();
  });
});

describe('points as people write them', () => {
  it('reads pushes with semicolons, fractions, pressures and plugs', () => {
    const reading = readPedalPoints(
      '20 lbf 1 1/8 in; 300 psi: 1.4 in; 40 lbf 1.6 in plugged front-left, front-right',
      null,
    );
    if (reading.ok) expect.unreachable('three points are too few');
    expect(reading.problems.map(({ code }) => code)).toEqual(['too-few-points']);
    const whole = readPedalPoints(
      '20 N 20 mm; 40 N 25 mm; 80 N 30 mm; 160 N 35 mm; 160 N 30 mm plugged rear-left',
      null,
    );
    if (!whole.ok) expect.unreachable('these are fine');
    expect(whole.points.at(-1)?.plugged).toEqual(['rear-left']);
  });

  it('reads a table with units in its headings or in its cells', () => {
    const table = 'travel (in);force (lbf)\n# first day\n1,0;10\n1.2;20\n1.4;40\n1.7;80 lbf\n';
    const reading = readPedalPoints(table, 'points.csv');
    if (!reading.ok) expect.unreachable(reading.problems.map(({ message }) => message).join());
    expect(reading.points.map(({ travel }) => Math.round(10_000 * travel.value))).toEqual([
      254, 305, 356, 432,
    ]);
  });

  it.each([
    ['too few', '20 N 20 mm; 40 N 25 mm; 80 N 30 mm', 'too-few-points', null],
    ['not rising', '20 N 20 mm; 40 N 25 mm; 30 N 30 mm; 90 N 35 mm', 'points-not-rising', 'point 3'],
    ['falling travel', '20 N 20 mm; 40 N 25 mm; 60 N 22 mm; 90 N 35 mm', 'points-not-rising', 'point 3'],
    ['at one force', '80 N 20 mm; 80 N 25 mm; 81 N 30 mm; 82 N 35 mm', 'points-at-one-force', null],
    ['a push without travel', '20 N 20 mm; 40 N; 60 N 24 mm; 90 N 35 mm', 'missing', 'point 2'],
    ['a force that no leg has', '20 N 20 mm; 40 kN 22 mm; 60 N 24 mm; 90 N 35 mm', 'out-of-range', 'point 2'],
    [
      'an unknown corner',
      '20 N 20 mm; 40 N 22 mm plugged left; 60 N 24 mm; 90 N 35 mm',
      'unknown-choice',
      'point 2',
    ],
  ])('refuses %s, with the place and what is accepted', (_name, text, code, place) => {
    const reading = readPedalPoints(text, null);
    if (reading.ok) expect.unreachable('it was taken');
    const [first] = reading.problems;
    expect(first?.code).toBe(code);
    expect(first?.message).toMatch(/accepted/);
    if (place !== null) expect(first?.message.startsWith(place)).toBe(true);
  });

  it('says file and line in a table', () => {
    const reading = readPedalPoints('force (N),travel (mm)\n20,20\n40,x\n60,30\n90,35\n', 'points.csv');
    if (reading.ok) expect.unreachable('it was taken');
    expect(reading.problems.map(({ file, line }) => [file, line])).toEqual([['points.csv', 3]]);
  });
});

describe('mistakes in the pedal of a job', () => {
  const problemsOf = (...changes: readonly Change[]) => {
    const text = changes.reduce((changed, [from, to]) => changed.replace(from, to), exampleJobText);
    const reading = readJob(text, { file: 'job.yaml' });
    return reading.ok ? [] : reading.problems.map(({ code, message }) => `${code}: ${message}`);
  };
  const test = (points: string, setUp = 'as-found'): Change => [
    'runs:',
    `pedalPoints:\n  - setUp: ${setUp}\n    engine: running\n    points: [${points}]\nruns:`,
  ];
  const good = [20, 40, 80, 160].map((force) => `{ force: ${force} N, travel: ${20 + force / 10} mm }`);

  it('takes good points', () => {
    expect(problemsOf(test(good.join(', ')))).toEqual([]);
  });

  it.each([
    ['an unknown set-up', test(good.join(', '), 'as-fond'), /^unknown-set-up: .*did you mean "as-found"/],
    ['too few points', test(good.slice(1).join(', ')), /^too-few-points: pedalPoints\[0\]\.points: 3 points/],
    [
      'points that fall',
      test(good.toReversed().join(', ')),
      /^points-not-rising: pedalPoints\[0\]\.points\[1\]/,
    ],
    [
      'force and pressure together',
      test([...good, '{ force: 200 N, linePressure: 20 bar, travel: 50 mm }'].join(', ')),
      /^contradiction: pedalPoints\[0\]\.points\[4\] has both/,
    ],
    [
      'neither force nor pressure',
      test([...good, '{ travel: 50 mm }'].join(', ')),
      /^missing: pedalPoints\[0\]\.points\[4\] has neither/,
    ],
    [
      'strokes that do not sum',
      [
        'title: Master cylinder, bore: 7/8 in',
        'title: Master cylinder, bore: 7/8 in, stroke: 34 mm, primaryStroke: 24 mm, secondaryStroke: 14 mm',
      ],
      /^contradiction: parts\.master\.primaryStroke: 38\.0 mm/,
    ],
  ] as const)('%s', (_name, change, message) => {
    const problems = problemsOf(change);
    expect(problems.length).toBeGreaterThan(0);
    expect(problems[0]).toMatch(message);
  });
});
