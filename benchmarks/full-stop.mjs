// How long one full stop takes on one core (four wheels with slip and relaxation, antilock, heat), against the same scheme
// written in plain C (cc -O2), both in one run; and what the quick stop costs beside it.
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import {
  exampleRoad,
  exampleSetUp,
  fullStop,
  fullStopWorkspace,
  quickStop,
  stopWorkspace,
} from '@standstill/braking';
import { numbersOf } from './full-stop/numbers.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const rounds = 25;
const stop = {
  setUp: exampleSetUp,
  road: exampleRoad,
  foot: { kind: 'ramp', force: 400, rampTime: 0.2 },
  speed: 26.8224,
  rotorTemperatures: { front: 100, rear: 100 },
};
const stops = { jobs: 20, twin: 40, quick: 1000 };

export default async function fullStops() {
  const march = fullStopWorkspace();
  const room = stopWorkspace();
  const input = [stops.twin, ...numbersOf(stop, march)].join(' ');
  const program = compiledTwin();
  const best = { full: Infinity, quick: Infinity, twin: Infinity };
  let twin = [Number.NaN, Number.NaN, Number.NaN];
  for (let i = 0; i < 5 * stops.jobs; i += 1) fullStop(stop, march);
  for (let round = 0; round < rounds; round += 1) {
    best.full = Math.min(
      best.full,
      secondsOf(stops.jobs, () => fullStop(stop, march)),
    );
    best.quick = Math.min(
      best.quick,
      secondsOf(stops.quick, () => quickStop({ ...stop, foot: quickFoot }, room)),
    );
    if (program === undefined) continue;
    twin = execFileSync(program, { input, encoding: 'utf8' }).split(' ').map(Number);
    best.twin = Math.min(best.twin, twin[0]);
  }
  const full = fullStop(stop, march);
  const rows = [
    {
      name: 'full stop from 60 mph, four wheels, antilock, heat',
      value: 1000 * best.full,
      unit: 'ms a core',
      reference: 'quick stop',
      ratio: best.full / best.quick,
      note: `${full.distance.toFixed(2)} m, ${full.frontCycles + full.rearCycles} cycles of the control`,
    },
  ];
  if (program === undefined) return rows;
  const off = twin[1] / full.distance - 1;
  return [
    ...rows,
    {
      name: 'the same full stop, against its own scheme in C (cc -O2)',
      value: 1000 * best.twin,
      unit: 'ms a core, C',
      reference: 'the twin in C; wanted: 1.6 or less',
      ratio: best.full / best.twin,
      note: `distances ${(100 * off).toFixed(6)} % apart`,
    },
  ];
}

const quickFoot = { force: stop.foot.force, rampTime: stop.foot.rampTime };

function secondsOf(count, job) {
  const start = process.hrtime.bigint();
  for (let i = 0; i < count; i += 1) job();
  return Number(process.hrtime.bigint() - start) / 1e9 / count;
}

function compiledTwin() {
  if (spawnSync('cc', ['--version']).status !== 0) return undefined;
  const folder = join(root, 'node_modules/.cache/standstill/full-stop');
  const program = join(folder, 'full-stop');
  mkdirSync(folder, { recursive: true });
  execFileSync('cc', ['-O2', '-o', program, join(root, 'benchmarks/full-stop/full-stop.c'), '-lm']);
  return program;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) console.table(await fullStops());
