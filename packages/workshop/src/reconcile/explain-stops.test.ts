import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { quickStop } from '@standstill/braking';
import { mean } from '@standstill/numerics';
import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../job/example-job.testing.ts';
import type { Job } from '../job/job.ts';
import { readJob } from '../job/reading/read-job.ts';
import { stopInputOf } from '../predict/evaluate.ts';
import { reportLog } from '../proof/report-log.ts';
import type { LogReport } from '../results/log-report.ts';
import { reconciliation } from '../results/reconciliation.ts';
import type { Reconciliation } from '../results/reconciliation.ts';
import { settle } from '../settle/settle.ts';
import { explainStops } from './explain-stops.ts';
import type { ExplainStopsInput } from './explain-stops-input.ts';
import { madeReport, madeTruth } from './made-stops.testing.ts';

const demo = join(import.meta.dirname, '../../../../examples/hill-climb-coupe');
const speed = 60 * 0.44704;

function jobOf(text: string): Job {
  const reading = readJob(text, { file: 'job.yaml' });
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.job;
}

function sure(found: ReturnType<typeof explainStops>): Reconciliation {
  if (found.kind !== 'reconciliation') throw new Error(found.sentence);
  return found;
}

describe('the demo: a kit and, on the second day, new tires with 14 % more grip', () => {
  const job = jobOf(readFileSync(join(demo, 'job.yaml'), 'utf8'));
  const [before, after] = ['before', 'after'].map((side) => {
    const read = reportLog(
      { name: `${side}.csv`, content: readFileSync(join(demo, `${side}.csv`)) },
      { nominalSpeed: speed },
    );
    if (read.kind !== 'log-report') throw new Error(read.sentence);
    return read;
  }) as [LogReport, LogReport];
  const confounders = ['tires: old before, new after', 'date: 2026-05-09 before, 2026-05-23 after'];
  const found = sure(
    explainStops({
      job,
      before: { setUp: 'as-found', reports: [before] },
      after: { setUp: 'four-wheel-kit-with-valve', reports: [after] },
      confounders,
    }),
  );
  const truth = JSON.parse(readFileSync(join(demo, 'truth.json'), 'utf8')) as Record<
    'before' | 'after',
    { readonly stops: readonly { readonly entrySpeed_m_s: number; readonly distance_m: number }[] }
  >;
  const trueMean = (side: 'before' | 'after'): number =>
    mean(
      truth[side].stops.map(({ distance_m, entrySpeed_m_s }) => distance_m * (speed / entrySpeed_m_s) ** 2),
    );
  /** What was put in but for the tires. */
  const brakes = (['as-found', 'four-wheel-kit-with-valve'] as const)
    .map((id) => quickStop(stopInputOf(settle(job, id))).distance)
    .reduce((old, now) => now - old);
  const whole = trueMean('after') - trueMean('before');

  it('is what its schema says', () => {
    expect(reconciliation.parse(found)).toEqual(found);
    expect(found.nominalSpeed_m_s).toBeCloseTo(speed, 9);
    expect([found.before.count, found.after?.count]).toEqual([7, 7]);
  });

  it('learns the old grip, and a distance without the delay of the logger', () => {
    const grip = found.learned.find(({ path }) => path === 'tires.grip')?.learned;
    // 0.94 with 0.2 % more a run: 0.946 over seven runs.
    expect(grip?.low).toBeLessThan(0.94);
    expect(grip?.high).toBeGreaterThan(0.95);
    const [distance] = found.observations;
    expect(distance?.learned.low).toBeLessThan(trueMean('before'));
    expect(distance?.learned.high).toBeGreaterThan(trueMean('before'));
    const width = (each: { low: number; high: number } | undefined): number =>
      (each?.high ?? NaN) - (each?.low ?? NaN);
    expect(width(distance?.learned)).toBeLessThan(0.5 * width(distance?.measured));
    expect(found.fit.p).toBeGreaterThan(0.05);
  });

  it('gives the brakes a part, and no more than what was put in can be', () => {
    const { expected_m: expected, measured_m: measured, share, unexplained_m: rest } = found.change!;
    for (const [interval, value] of [
      [expected, brakes],
      [measured, whole],
      [share, brakes / whole],
      [rest, whole - brakes],
    ] as const) {
      expect(interval!.low).toBeLessThan(value);
      expect(interval!.high).toBeGreaterThan(value);
    }
    expect(share!.high).toBeLessThan(0.9);
    expect(rest!.high).toBeLessThan(0);
  });

  it('says so first, and who else may have made it', () => {
    expect(found.sentence).toMatch(
      /^From 60 mph, of the 20 to 26 ft that the car now stops shorter, the brakes can explain at most \d+ %; .* are the new tires, the other day or what the model lacks\.$/,
    );
    expect(found.notToldApart[0]?.titles).toEqual(['the new tires', 'the new brakes']);
    expect(found.notToldApart[1]?.titles).toContain("the tires' grip");
    expect(found.notToldApart[1]?.titles).toContain('how near to locking the driver holds it');
    expect(found.notToldApart[1]?.correlation).toBeLessThan(-0.5);
    expect(found.beyondTheBrakes.slice(0, 2)).toEqual(confounders);
    expect(found.warnings.map(({ code, severity }) => [code, severity])).toContainEqual([
      'tires-and-brakes-changed',
      'caution',
    ]);
    const driven = found.observations.find(
      ({ set, quantity }) => set === 'after' && quantity === 'fully-developed-deceleration',
    );
    expect(driven?.agrees).toBe(false);
  });

  it('is a prediction that has learned where nothing was driven after', () => {
    const input = { job, before: { setUp: 'as-found', reports: [before] } };
    const kit = { setUp: 'four-wheel-kit-with-valve', reports: [] };
    const predicted = sure(explainStops({ ...input, after: kit }));
    expect(predicted.change?.expected_m).toEqual(found.change?.expected_m);
    expect(predicted.change).toMatchObject({ measured_m: null, share: null, unexplained_m: null });
    expect(predicted.sentence).toMatch(/are expected to stop the car .* by what the 7 stops before teach/);
    expect(predicted.beyondTheBrakes).toEqual([]);
    const alone = sure(explainStops(input));
    expect([alone.after, alone.change]).toEqual([null, null]);
    expect(alone.observations.every(({ set }) => set === 'before')).toBe(true);
    expect(alone.sentence).toBe(
      'From 60 mph the 7 stops fit what the job says of the car; no change was asked about.',
    );
  });
});

const more = `  nothing-new: { title: Nothing new, basedOn: as-found }
  new-tires: { title: New tires, basedOn: as-found, frontTire: sticky, rearTire: sticky }
  kit-and-tires: { title: Kit and tires, basedOn: front-kit, frontTire: sticky, rearTire: sticky }

runs:`;
const sticky =
  'parts:\n  sticky: { kind: tire, title: Sticky tires, class: semiSlick, size: 205/50 R16, peakFriction: { value: 1.2, origin: specified, spread: 0.05 } }\n';
const job = jobOf(exampleJobText.replace('\nruns:', `\n${more}`).replace('parts:\n', sticky));
const truth = madeTruth(job, ['as-found', 'front-kit', 'new-tires', 'kit-and-tires'], speed, 11);

function drivenWith(
  setUp: string,
  made: { readonly index: number; readonly stops?: number; readonly seed: number; readonly grip?: number },
): ExplainStopsInput['before'] {
  const { index, stops = 6, seed, grip = 1 } = made;
  return { setUp, reports: [madeReport(truth, { setUp: index, stops, seed, grip, delay: 0.03 })] };
}

const asFound = drivenWith('as-found', { index: 0, seed: 1 });

describe('a change that is not the brakes', () => {
  it('expects nothing of a set-up in which nothing changed', () => {
    const after = drivenWith('nothing-new', { index: 0, seed: 2, grip: 1.15 });
    const found = sure(explainStops({ job, before: asFound, after, draws: 150 }));
    expect(found.change?.expected_m).toEqual({ value: 0, low: 0, high: 0 });
    expect(found.change?.share).toEqual({
      value: expect.closeTo(0, 9),
      low: expect.closeTo(0, 9),
      high: expect.closeTo(0, 9),
    });
    expect(found.sentence).toMatch(/the brakes explain nothing: by the model the two set-ups stop alike/);
  });

  it('gives the brakes nothing of what the set-up says are other tires', () => {
    const after = drivenWith('new-tires', { index: 2, seed: 3 });
    const found = sure(explainStops({ job, before: asFound, after, draws: 150 }));
    expect(found.change?.expected_m).toEqual({ value: 0, low: 0, high: 0 });
    expect(found.beyondTheBrakes[0]).toMatch(/^tires: "New tires" has others/);
    expect(found.sentence).toMatch(/the new tires/);
    expect(found.notToldApart.map(({ titles }) => titles)).not.toContainEqual([
      'the new tires',
      'the new brakes',
    ]);
  });

  it('expects of brakes and tires together what it expects of the brakes alone', () => {
    const both = sure(
      explainStops({
        job,
        before: asFound,
        after: drivenWith('kit-and-tires', { index: 3, seed: 4 }),
        draws: 150,
      }),
    );
    const alone = sure(
      explainStops({
        job,
        before: asFound,
        after: drivenWith('front-kit', { index: 1, seed: 5 }),
        draws: 150,
      }),
    );
    expect(both.change?.expected_m.value).toBeCloseTo(alone.change!.expected_m.value, 0);
    expect(both.notToldApart[0]?.titles).toEqual(['the new tires', 'the new brakes']);
    const after = both.observations.find(({ set }) => set === 'after');
    const old = alone.observations.find(({ set }) => set === 'after');
    expect(after!.byJob.value).toBeLessThan(old!.byJob.value - 3);
  });

  it('names no share of a change that can not be told from none', () => {
    const after = drivenWith('nothing-new', { index: 0, seed: 6 });
    const found = sure(explainStops({ job, before: asFound, after, draws: 150 }));
    expect(found.change?.share).toBeNull();
    expect(found.sentence).toMatch(/can't be told from none \(.*\), so no share/);
  });
});

describe('stops that do not fit the job', () => {
  const [report] = asFound.reports as [LogReport];
  const far: LogReport = {
    ...report,
    stops: report.stops.map((stop) => ({
      ...stop,
      start_s: stop.start_s + 1,
      correctedDistance_m: 0.5 * stop.correctedDistance_m!,
      applicationDistance_m: 0.5 * stop.applicationDistance_m,
      meanFullyDevelopedDeceleration_m_s2: 2 * stop.meanFullyDevelopedDeceleration_m_s2!,
    })),
  };
  const found = sure(
    explainStops({
      job,
      before: { setUp: 'as-found', reports: [far] },
      after: drivenWith('front-kit', { index: 1, seed: 7 }),
      draws: 150,
    }),
  );

  it('are said not to, with danger, and teach nothing that is pretended', () => {
    expect(found.fit.p).toBeLessThan(0.01);
    expect(found.fit.sentence).toMatch(/do not fit the job within its spreads/);
    expect(found.warnings[0]).toMatchObject({ code: 'stops-do-not-fit-job', severity: 'danger' });
    expect(found.change).toMatchObject({ share: null, unexplained_m: null });
    expect(found.sentence).toMatch(/do not fit the job within its spreads, so how much .* can't be said/);
    const { byJob_m: byJob, expected_m: expected } = found.change!;
    expect(expected.low).toBeLessThanOrEqual(byJob.low);
    expect(expected.high).toBeGreaterThanOrEqual(byJob.high);
  });
});

describe('line pressure and pedal force', () => {
  it('narrow the pads, which distance alone does not, and take the foot out of what is not told apart', () => {
    const gentle = jobOf(exampleJobText.replace('pedalForce: 90 lbf', 'pedalForce: 20 lbf'));
    const held = madeTruth(gentle, ['as-found'], speed, 5);
    const made = madeReport(held, { setUp: 0, stops: 6, seed: 8, delay: 0 });
    const into = new Float64Array(held.model.size);
    held.model.answer(held.departures, 0, into, 0);
    const withGauges: LogReport = {
      ...made,
      stops: made.stops.map((stop) => ({
        ...stop,
        developedPressure_Pa: stop.meanFullyDevelopedDeceleration_m_s2! / into[3]!,
        developedPedalForce_N: stop.meanFullyDevelopedDeceleration_m_s2! / into[4]!,
      })),
    };
    const learnedBy = (report: LogReport): Reconciliation =>
      sure(explainStops({ job: gentle, before: { setUp: 'as-found', reports: [report] }, draws: 250 }));
    const [bare, gauged] = [learnedBy(made), learnedBy(withGauges)];
    const narrowed = (found: Reconciliation, path: string): number =>
      found.learned.find((each) => each.path === path)?.narrowed ?? NaN;
    expect(narrowed(gauged, 'parts.stock-pad.friction')).toBeGreaterThan(
      narrowed(bare, 'parts.stock-pad.friction') + 0.15,
    );
    expect(narrowed(gauged, 'conditions.pedalForce')).toBeGreaterThan(0.5);
    // The tires were never asked for what they have.
    expect(narrowed(bare, 'tires.grip')).toBeLessThan(0.1);
    expect(gauged.observations.map(({ quantity }) => quantity)).toContain('deceleration-per-pressure');
    expect(bare.notToldApart[0]?.titles).toContain('the force of the foot');
    expect(bare.notToldApart[0]?.toTellApart).toMatch(/record the/);
    expect(gauged.notToldApart.flatMap(({ titles }) => titles)).not.toContain('the force of the foot');
  });
});

describe('what is missing is said in one sentence', () => {
  it.each([
    ['unknown-set-up', { before: { setUp: 'racing', reports: asFound.reports } }, /no set-up "racing"/],
    ['no-stop-counts', { before: { setUp: 'as-found', reports: [] } }, /at least three stops/],
    [
      'set-too-small',
      { before: drivenWith('as-found', { index: 0, stops: 1, seed: 9 }) },
      /has 1 stop that counts; the model needs at least two/,
    ],
    [
      'same-log',
      { before: asFound, after: { setUp: 'front-kit', reports: asFound.reports } },
      /is given twice/,
    ],
    [
      'nominal-speeds-differ',
      {
        before: {
          setUp: 'as-found',
          reports: [...asFound.reports, { ...asFound.reports[0]!, duration_s: 1, nominalSpeed_m_s: 20 }],
        },
      },
      /different speeds/,
    ],
  ] as const)('%s', (code, input, words) => {
    const found = explainStops({ job, ...input, draws: 100 });
    expect(found).toMatchObject({ kind: 'reconciliation-refusal', code });
    expect(found.sentence).toMatch(words);
  });
});
