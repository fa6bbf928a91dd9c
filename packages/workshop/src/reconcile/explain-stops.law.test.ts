import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../job/example-job.testing.ts';
import { readJob } from '../job/reading/read-job.ts';
import { respelled, soundJob } from '../job/respelled-job.testing.ts';
import type { Job } from '../job/job.ts';
import type { Estimate } from '../results/estimate.ts';
import type { LogReport } from '../results/log-report.ts';
import type { Reconciliation } from '../results/reconciliation.ts';
import { coverageOf, printed } from './coverage.testing.ts';
import { explainStops } from './explain-stops.ts';
import { madeReport, madeTruth } from './made-stops.testing.ts';

const speed = 60 * 0.44704;
const reading = readJob(exampleJobText.replace('antilock: abs', 'antilock: none'), { file: 'job.yaml' });
if (!reading.ok) throw new Error('the example job is not a job');
const { document } = reading;
const example = reading.job;
const setUps = ['as-found', 'front-kit'] as const;

function explained(job: Job, before: LogReport, after: LogReport, seed = 1, draws = 120): Reconciliation {
  const found = explainStops({
    job,
    before: { setUp: setUps[0], reports: [before] },
    after: { setUp: setUps[1], reports: [after] },
    draws,
    seed,
  });
  if (found.kind !== 'reconciliation') throw new Error(found.sentence);
  return found;
}

function made(seed: number): readonly [before: LogReport, after: LogReport] {
  const truth = madeTruth(example, setUps, speed, seed);
  const of = (setUp: number): LogReport =>
    madeReport(truth, { setUp, stops: 5, seed: 2 * seed + setUp, delay: 0.02 });
  return [of(0), of(1)];
}

const width = ({ low, high }: Estimate): number => high - low;

describe('learning from stops', () => {
  it('holds the truth in its intervals, over some cars and days', () => {
    const found = coverageOf({ job: example, setUps, tires: 'tires', cases: 12, draws: 100 });
    console.log(
      `of stated 95 % intervals: grip ${printed(found.grip)}, distance ${printed(found.distance)}, expected ${printed(found.expected)}, share ${printed(found.share)}`,
    );
    for (const { held, of } of [found.grip, found.distance, found.expected, found.share]) {
      expect(of).toBeGreaterThan(7);
      // 95 % with so few cases: three misses or more come by chance once in fifty times; the long test has hundreds.
      expect(of - held).toBeLessThan(3);
    }
    expect(found.width.learned).toBeLessThan(0.6 * found.width.byJob);
    expect(found.misfits).toBeLessThan(3);
  });

  it('gives the same bits for the same seed, and nearly the same for another', () => {
    const [before, after] = made(3);
    const one = explained(example, before, after);
    expect(explained(example, before, after)).toEqual(one);
    const other = explained(example, before, after, 2, 240);
    const { expected_m: a } = one.change!;
    const { expected_m: b } = other.change!;
    expect(b).not.toEqual(a);
    expect(Math.abs(a.value - b.value)).toBeLessThan(0.15 * width(b));
  });

  it('is never less sure of the old set-up for twice the stops', () => {
    for (let seed = 0; seed < 2; seed += 1) {
      const [before, after] = made(seed);
      const again = before.stops.map((stop) => ({ ...stop, start_s: stop.start_s + 1000 }));
      const twice = { ...before, stops: [...before.stops, ...again] };
      const [once, doubled] = [before, twice].map((set) => explained(example, set, after, 1, 250)) as [
        Reconciliation,
        Reconciliation,
      ];
      // The first figures are the distance and the deceleration before; what is over 1 is the chance of the draws, which
      // is all that moves a change that the stops before say little of.
      for (const place of [0, 1])
        expect(width(doubled.observations[place]!.learned)).toBeLessThan(
          1.05 * width(once.observations[place]!.learned),
        );
      expect(width(doubled.change!.expected_m)).toBeLessThan(1.12 * width(once.change!.expected_m));
    }
  });

  it('does not care for the units of the job', () => {
    const [before, after] = made(5);
    const wanted = explained(example, before, after).change!;
    for (let pick = 1; pick <= 2; pick += 1) {
      const other = soundJob(respelled(document, picksFrom(pick)));
      const found = explained(other, before, after).change!;
      for (const key of ['byJob_m', 'expected_m', 'measured_m'] as const)
        for (const end of ['value', 'low', 'high'] as const)
          expect(found[key]![end]).toBeCloseTo(wanted[key]![end], 4);
    }
  });
});

function* picksFrom(first: number): Generator<number> {
  for (let pick = first; ; pick += 7) yield pick;
}
