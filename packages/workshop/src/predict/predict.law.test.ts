import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawSheet } from '../draws/draw-sheet.ts';
import { knownsOf } from '../draws/knowns-of.ts';
import type { JobDocument } from '../job/document/job-document.ts';
import { exampleJobText } from '../job/example-job.testing.ts';
import { readJob } from '../job/reading/read-job.ts';
import { respelled, soundJob } from '../job/respelled-job.testing.ts';
import { predict } from './predict.ts';
import { sampleSetUps } from './sample-set-ups.ts';

const example = readJob(exampleJobText, { file: 'job.yaml' });
if (!example.ok) throw new Error('the example job is not a job');
const { job, document } = example;

describe('pairing', () => {
  it('takes what two set-ups share out of their difference', () => {
    const setUpIds = ['as-found', 'front-kit'];
    const input = { job, setUpIds, overrides: {}, draws: 400 };
    const paired = sampleSetUps({ ...input, seed: 1 });
    const other = sampleSetUps({ ...input, seed: 2 });
    const asFound = paired.bySetUp[0]?.distance ?? new Float64Array();
    const kit = paired.bySetUp[1]?.distance ?? new Float64Array();
    const kitApart = other.bySetUp[1]?.distance ?? new Float64Array();
    const together = variance(kit.map((value, row) => value - (asFound[row] ?? NaN)));
    const apart = variance(kitApart.map((value, row) => value - (asFound[row] ?? NaN)));
    console.log(
      `variance of the difference: paired ${together.toFixed(3)} m², unpaired ${apart.toFixed(3)} m²`,
    );
    expect(together).toBeLessThan(apart / 20);
  });

  it('leaves no difference at all between two set-ups of the same parts', () => {
    const twin = {
      ...document,
      setUps: { ...document.setUps, twin: { title: 'Twin', basedOn: 'as-found' } },
    };
    const [difference] = predict(soundJob(twin), { draws: 60, setUps: ['as-found', 'twin'] }).differences;
    expect(difference).toMatchObject({
      distance_m: { value: 0, low: 0, high: 0 },
      pedalTravel_m: { value: 0, low: 0, high: 0 },
      lastRepeatedStop_m: { value: 0, low: 0, high: 0 },
      byPart: [],
    });
  });
});

describe('draws', () => {
  it('have the value as mean and the spread as standard deviation, inside the range', () => {
    const knowns = knownsOf(job, ['as-found', 'front-kit', 'hoses-only']);
    expect(knowns.length).toBeGreaterThan(80);
    const sheet = drawSheet({ knowns, draws: 400, seed: 5 });
    for (const known of knowns) {
      const values = Float64Array.from(sheet, (draw) => draw(known));
      expect(Math.min(...values)).toBeGreaterThanOrEqual(known.low);
      expect(Math.max(...values)).toBeLessThanOrEqual(known.high);
      const reach = 3.5 * known.spread;
      if (known.value - reach < known.low || known.value + reach > known.high) continue; // cut by its range
      expect(Math.abs(mean(values) - known.value)).toBeLessThan(0.01 * known.spread);
      expect(Math.abs(Math.sqrt(variance(values)) / known.spread - 1)).toBeLessThan(0.02);
    }
  });

  it('hold the central stop, and widen with the spreads', () => {
    const exact = predict(
      soundJob({ ...document, car: { ...document.car, frontLoadShare: { value: '53 %', spread: '0 %' } } }),
      { draws: 200 },
    );
    const vague = predict(
      soundJob({ ...document, car: { ...document.car, frontLoadShare: { value: '53 %', spread: '6 %' } } }),
      { draws: 200 },
    );
    const width = (prediction: typeof exact): number => {
      const z = prediction.setUps[0]?.balance.lockDeceleration_g;
      return (z?.high ?? NaN) - (z?.low ?? NaN);
    };
    expect(width(vague)).toBeGreaterThan(width(exact));
  });
});

/**
 * What a rounding of the inputs may move, by what the model promises: nothing that can be seen in what is worked out in
 * closed form, 1e-6 in a stop, and with ABS, where a step is cut as it comes in, what halving the steps may move (0.05 %).
 */
const closedForm = 1e-10;
const agreement = (stop: number): Readonly<Record<(typeof compared)[number], number>> => ({
  pedalTravel_m: closedForm,
  frontLinePressure_Pa: closedForm,
  distance_m: stop,
  time_s: stop,
  frontRotorPeak_C: stop,
});
const compared = [
  'pedalTravel_m',
  'frontLinePressure_Pa',
  'distance_m',
  'time_s',
  'frontRotorPeak_C',
] as const;

describe('units', () => {
  it.each([
    ['with ABS', document, 5e-4],
    ['without ABS', withoutAntilock(document), 1e-6],
  ])('do not matter, %s: the same job in other spellings predicts the same', (_, written, stop) => {
    const tolerances = agreement(stop);
    fc.assert(
      fc.property(fc.infiniteStream(fc.nat({ max: 1000 })), (picks) => {
        const other = predict(soundJob(respelled(written, picks)), { draws: 6 });
        const same = predict(soundJob(written), { draws: 6 });
        other.setUps.forEach((setUp, index) => {
          const original = same.setUps[index];
          expect(setUp.limitedBy).toBe(original?.limitedBy);
          for (const key of compared) {
            for (const end of ['value', 'low', 'high'] as const)
              close(setUp[key][end], original?.[key][end] ?? NaN, tolerances[key]);
          }
        });
      }),
      { numRuns: 20 },
    );
  });
});

function withoutAntilock(written: JobDocument): JobDocument {
  const setUps = Object.entries(written.setUps).map(([id, setUp]) => [
    id,
    'antilock' in setUp ? { ...setUp, antilock: 'none' } : setUp,
  ]);
  return { ...written, setUps: Object.fromEntries(setUps) as JobDocument['setUps'] };
}

function close(value: number, expected: number, tolerance: number): void {
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(tolerance * Math.abs(expected));
}

function mean(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function variance(values: Float64Array): number {
  const center = mean(values);
  return values.reduce((sum, value) => sum + (value - center) ** 2, 0) / (values.length - 1);
}
