import { expect, it } from 'vitest';
import type { Job } from '../job/job.ts';
import { exampleJobText } from '../job/example-job.testing.ts';
import { readJob } from '../job/reading/read-job.ts';
import { influentialAssumptions } from './influential-assumptions.ts';

function jobOf(text: string): Job {
  const reading = readJob(text, { file: 'job.yaml' });
  if (!reading.ok) throw new Error(reading.problems[0]?.message);
  return reading.job;
}

const found = influentialAssumptions(jobOf(exampleJobText));

it('names the assumed values that the stop hangs on, the greatest first', () => {
  expect(found[0]).toMatchObject({ path: 'parts.tires.peakFriction', title: 'Peak friction on dry road' });
  expect(found.length).toBeLessThanOrEqual(5);
  const changes = found.map(({ change_m }) => change_m);
  expect(changes).toEqual(changes.toSorted((a, b) => b - a));
});

it('gives the size that the grip itself has: distance goes about with one over the friction', () => {
  const { text, change_m } = found[0] ?? { text: '', change_m: NaN };
  const [, friction = NaN, spread = NaN] = (/^([\d.]+) ± ([\d.]+)$/.exec(text) ?? []).map(Number);
  expect((change_m / 45) * friction).toBeGreaterThan(0.5 * spread);
  expect((change_m / 45) * friction).toBeLessThan(1.5 * spread);
});

it('says no more of a value once it is measured', () => {
  const text = exampleJobText.replace(
    'class: sportyRoad, size: 205/50 R16',
    'class: sportyRoad, size: 205/50 R16, peakFriction: { value: 1.02, origin: measured }',
  );
  expect(text).not.toBe(exampleJobText);
  const paths = influentialAssumptions(jobOf(text)).map(({ path }) => path);
  expect(paths).not.toContain('parts.tires.peakFriction');
});

it('takes the number asked for, and units', () => {
  const [one, ...more] = influentialAssumptions(jobOf(exampleJobText), { most: 1, units: 'metric' });
  expect([one?.path, more]).toEqual([found[0]?.path, []]);
});
