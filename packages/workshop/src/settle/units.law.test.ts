import { axleLoads, brakeTorque, linePressures, pedalTravel, quickStop } from '@standstill/braking';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../job/example-job.testing.ts';
import type { Job } from '../job/job.ts';
import { readJob } from '../job/reading/read-job.ts';
import { respelled, soundJob } from '../job/respelled-job.testing.ts';
import { settle } from './settle.ts';

const example = readJob(exampleJobText.replace('antilock: abs', 'antilock: none'), { file: 'job.yaml' });
if (!example.ok) throw new Error('the example job is not a job');
const { document } = example;
const setUpIds = ['as-found', 'front-kit', 'hoses-only'] as const;
const anyRespelling = fc
  .infiniteStream(fc.nat({ max: 1000 }))
  .map((picks) => soundJob(respelled(document, picks)));

/** What is worked out in closed form, of all set-ups. */
function statics(job: Job): readonly number[] {
  return setUpIds.flatMap((id) => {
    const { setUp, foot, road } = settle(job, id);
    const pressures = linePressures({ setUp, pedalForce: foot.force });
    const loads = axleLoads({ car: setUp.car, road, deceleration: 8, speed: 20 });
    const torque = brakeTorque({ brake: setUp.frontBrake, pressure: pressures.front, friction: 0.4 });
    const { travel, strokeReserve } = pedalTravel({ setUp, pedalForce: foot.force });
    return [pressures.front, pressures.rear, loads.front, loads.rear, torque, travel, strokeReserve];
  });
}

function distances(job: Job): readonly number[] {
  return setUpIds.map((id) => quickStop(settle(job, id)).distance);
}

function worst(found: readonly number[], wanted: readonly number[]): number {
  return Math.max(...wanted.map((value, index) => Math.abs((found[index] ?? NaN) / value - 1)));
}

describe('a job in other units', () => {
  it('has the same static results to 10 digits', () => {
    const wanted = statics(example.job);
    fc.assert(
      fc.property(anyRespelling, (job) => {
        expect(worst(statics(job), wanted)).toBeLessThan(1e-10);
      }),
      { numRuns: 500 },
    );
  });

  it('has the same stop within 1e-6, without ABS', () => {
    const wanted = distances(example.job);
    fc.assert(
      fc.property(anyRespelling, (job) => {
        expect(worst(distances(job), wanted)).toBeLessThan(1e-6);
      }),
      { numRuns: 500 },
    );
  });
});
