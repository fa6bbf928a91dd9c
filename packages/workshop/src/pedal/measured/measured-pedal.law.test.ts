import { pedalTravel } from '@standstill/braking';
import type { SetUp } from '@standstill/braking';
import { randomStream } from '@standstill/numerics';
import { describe, expect, it } from 'vitest';
import { drawSheet } from '../../draws/draw-sheet.ts';
import { exampleJobText } from '../../job/example-job.testing.ts';
import { pedalPointFacts } from '../../job/facts/pedal-point-facts.ts';
import type { Job, JobPedalPoint } from '../../job/job.ts';
import type { Known } from '../../job/known.ts';
import { readJob } from '../../job/reading/read-job.ts';
import { settle } from '../../settle/settle.ts';
import { pedalKnowns } from '../pedal-sample.ts';
import { measuredPedal } from './measured-pedal.ts';
import { inStateOf } from './usable-points.ts';

function exampleJob(): Job {
  const reading = readJob(exampleJobText, { file: 'job.yaml' });
  if (!reading.ok) throw new Error('the example is refused');
  return reading.job;
}

const job = exampleJob();
const jobSetUp = job.setUps[0]!;
const knowns = pedalKnowns(job, jobSetUp);
/** A made pedal is one of these draws, and what is known of it are the others. */
const made = drawSheet({ knowns, draws: 600, seed: 77 });
const pedals = made.length;
const known = drawSheet({ knowns, draws: 24, seed: 5 }).map((draw) => settle(job, 'as-found', draw).setUp);
const central = settle(job, 'as-found').setUp;

function stated(key: keyof typeof pedalPointFacts, value: number): Known {
  const fact = pedalPointFacts[key];
  return { value, origin: 'measured', spread: 0, path: key, low: fact.low, high: fact.high, fact };
}

/** Pushes of a pedal that is like the job's within its spreads, with some air of its own, read with noise. */
function pushesOf(setUp: SetUp, trappedAir: number, seed: number): JobPedalPoint[] {
  const state = inStateOf({ ...setUp, fluid: { ...setUp.fluid, trappedAir } }, 'off');
  const stream = randomStream(seed, 'made pushes');
  return [15, 40, 90, 180, 300, 450].map((pedalForce) => {
    const { travel } = pedalTravel({ setUp: state, pedalForce });
    const force = pedalForce * (1 + 0.03 * stream.normal());
    const read = Math.max(0.001, travel + 0.001 * stream.normal());
    return { force: stated('force', force), linePressure: null, travel: stated('travel', read), plugged: [] };
  });
}

describe('a measured pedal whose parts are known only within their spreads', () => {
  it('has its air inside the interval in at least 93 % of made pedals', () => {
    const widths: number[] = [];
    let covered = 0;
    made.forEach((draw, index) => {
      const air = (8e-6 * index) / pedals;
      const points = pushesOf(settle(job, 'as-found', draw).setUp, air, index + 1);
      const test = { setUp: 'as-found', engine: 'off', points } as const;
      const { air_m3 } = measuredPedal({ test, central, draws: known, seed: index, units: 'us' });
      widths.push(air_m3.high - air_m3.low);
      if (air_m3.low <= air && air <= air_m3.high) covered += 1;
    });
    const median = widths.sort((a, b) => a - b)[Math.floor(pedals / 2)] ?? NaN;
    console.info(`coverage of the air ${covered / pedals}, median width ${(1e6 * median).toFixed(2)} cm³`);
    expect(covered / pedals).toBeGreaterThanOrEqual(0.93);
  });
});
