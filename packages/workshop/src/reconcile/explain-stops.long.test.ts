import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../job/example-job.testing.ts';
import { readJob } from '../job/reading/read-job.ts';
import { coverageOf, printed } from './coverage.testing.ts';

const demo = join(import.meta.dirname, '../../../../examples/hill-climb-coupe/job.yaml');

function jobOf(text: string) {
  const reading = readJob(text, { file: 'job.yaml' });
  if (!reading.ok) throw new Error('not a job');
  return reading.job;
}

describe('stated 95 % intervals over a thousand cars and days', () => {
  it.each([
    {
      name: 'without ABS: the demo',
      job: jobOf(readFileSync(demo, 'utf8')),
      setUps: ['as-found', 'four-wheel-kit-with-valve'] as const,
      tires: 'road-tire',
    },
    {
      name: 'with ABS: the example',
      job: jobOf(exampleJobText),
      setUps: ['as-found', 'front-kit'] as const,
      tires: 'tires',
    },
  ])(
    'hold the truth: $name',
    ({ name, ...what }) => {
      const found = coverageOf({ ...what, cases: 500, draws: 150 });
      console.log(
        `${name}: grip ${printed(found.grip)}, distance ${printed(found.distance)}, expected ${printed(found.expected)}, unexplained ${printed(found.unexplained)}, share ${printed(found.share)}; misfits ${found.misfits}; width of the distance before ${found.width.byJob.toFixed(2)} m by the job, ${found.width.learned.toFixed(2)} m learned`,
      );
      for (const { held, of } of [found.grip, found.distance, found.expected, found.unexplained, found.share])
        expect(held / of).toBeGreaterThan(0.93);
      for (const { held, of } of [found.grip, found.distance]) expect(held / of).toBeLessThan(0.98);
    },
    1_800_000,
  );
});
