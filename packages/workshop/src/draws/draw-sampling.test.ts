import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../job/example-job.testing.ts';
import { readJob } from '../job/reading/read-job.ts';
import { predict } from '../predict/predict.ts';
import { DrawTable } from './draw-table.ts';
import { knownsOf } from './knowns-of.ts';

const reading = readJob(exampleJobText, { file: 'job.yaml' });
if (!reading.ok) throw new Error('the example is not sound');
const { job } = reading;
const knowns = knownsOf(job, ['as-found']);

/** Means of all numbers over all draws, in spreads from their middle. */
function meanDepartures(sampling: 'latin-hypercube' | 'sobol', draws: number): number[] {
  const table = new DrawTable({ knowns, draws, seed: 1, sampling });
  const sums = new Float64Array(knowns.length);
  for (let row = 0; row < draws; row += 1) {
    const place = table.turnTo(row);
    sums.forEach((sum, k) => {
      sums[k] = sum + (table.values[k * table.stride + place]! - knowns[k]!.value) / knowns[k]!.spread;
    });
  }
  return [...sums].map((sum) => sum / draws);
}

describe('draws from a Sobol sequence', () => {
  it('are even in every number, across blocks too', () => {
    const far = knowns.filter(
      ({ value, spread, low, high }) => value - 4 * spread > low && value + 4 * spread < high,
    );
    for (const draws of [512, 4096]) {
      const means = meanDepartures('sobol', draws);
      far.forEach((known) => expect(Math.abs(means[knowns.indexOf(known)]!)).toBeLessThan(10 / draws));
    }
  });

  it('give about the same intervals as a Latin hypercube, and others for another seed', () => {
    const asked = { draws: 256, setUps: ['as-found'] } as const;
    const latin = predict(job, asked).setUps[0]!.distance_m;
    const sobol = predict(job, { ...asked, sampling: 'sobol' });
    const [{ distance_m }] = sobol.setUps as [(typeof sobol.setUps)[number]];
    expect(sobol.sampling).toBe('sobol');
    expect(distance_m.value).toBe(latin.value);
    expect(Math.abs(distance_m.low - latin.low)).toBeLessThan(1.5);
    expect(Math.abs(distance_m.high - latin.high)).toBeLessThan(1.5);
    const other = predict(job, { ...asked, sampling: 'sobol', seed: 2 }).setUps[0]!.distance_m;
    expect(other.low).not.toBe(distance_m.low);
  });
});
