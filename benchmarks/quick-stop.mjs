// How many quick stops a second one core makes, against the plainest way to compute the same stop: Runge and Kutta's
// fourth-order method in steps of 1 ms on the same right-hand side, in JavaScript and, where there is a C compiler, in C.
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { exampleRoad, exampleSetUp, quickStop, stopBudget, stopWorkspace } from '@standstill/braking';
import { coefficientsOf } from './quick-stop/coefficients.mjs';
import { plainMarch } from './quick-stop/plain-march.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const rounds = 9;
const startTemperature = 100;
const stop = {
  setUp: exampleSetUp,
  road: exampleRoad,
  foot: { force: 300, rampTime: 0.2 },
  speed: 27.8,
  rotorTemperatures: { front: startTemperature, rear: startTemperature },
};
const withoutAntilock = { ...exampleSetUp, antilock: { kind: 'none', electronicRearLimit: false } };

export default async function quickStops() {
  const room = stopWorkspace();
  const coefficients = coefficientsOf(stop);
  const many = variants(400);
  let at = 0;
  const jobs = {
    plain: [3, () => plainMarch(coefficients, 0.001, startTemperature)],
    antilock: [3000, () => quickStop(stop, room)],
    driver: [3000, () => quickStop({ ...stop, setUp: withoutAntilock }, room)],
    torque: [3000, () => quickStop({ ...stop, foot: { force: 90, rampTime: 0.2 } }, room)],
    wet: [3000, () => quickStop({ ...stop, road: { ...exampleRoad, waterDepth: 0.0005 } }, room)],
    search: [3000, () => quickStop(many[(at += 1) % many.length], room)],
    budget: [40, () => stopBudget(stop)],
  };
  const best = measure(jobs);
  const reference = 'plain 1 ms Runge-Kutta march in JavaScript';
  const row = (name, key, note) => ({
    name,
    value: 1 / best[key],
    unit: 'stops/s a core',
    reference,
    ratio: best.plain / best[key],
    ...(note === undefined ? {} : { note }),
  });
  const off = quickStop(stop, room).distance / plainMarch(coefficients, 0.001, startTemperature) - 1;
  return [
    row('plain march, 1 ms', 'plain'),
    row('quick stop, antilock', 'antilock', `distance ${(100 * off).toFixed(2)} % off the plain march`),
    row('quick stop, driver at the lock limit', 'driver'),
    row('quick stop, torque-limited', 'torque'),
    row('quick stop, antilock on water', 'wet'),
    row('quick stop, another set-up each time', 'search'),
    ...twinRows(coefficients, best.antilock),
    {
      name: 'stop budget, 64 stops and their Shapley value',
      value: 1 / best.budget,
      unit: 'budgets/s a core',
      reference: '64 quick stops alone',
      ratio: (64 * best.antilock) / best.budget,
    },
  ];
}

/** s for one call of each job: the best of some rounds, taken in turn, so that all of them see the same machine. */
function measure(jobs) {
  const best = Object.fromEntries(Object.keys(jobs).map((key) => [key, Infinity]));
  for (let round = 0; round < rounds; round += 1) {
    for (const [key, [count, job]] of Object.entries(jobs)) {
      const start = process.hrtime.bigint();
      for (let i = 0; i < count; i += 1) job();
      const seconds = Number(process.hrtime.bigint() - start) / 1e9 / count;
      best[key] = Math.min(best[key], seconds);
    }
  }
  return best;
}

/** Set-ups as a search would try them: pistons, rotors, valves and tires in steps. */
function variants(count) {
  return Array.from({ length: count }, (_, i) => {
    const share = (factor) => ((i * factor) % 17) / 17;
    const { frontBrake, frontTire } = exampleSetUp;
    const caliper = { ...frontBrake.caliper, pistonDiameters: [0.048 + 0.012 * share(3)] };
    const rotor = { ...frontBrake.rotor, ringMass: 4 + 2 * share(5) };
    const tire = { ...frontTire, peakFriction: 0.85 + 0.3 * share(7) };
    const rearValve = { kind: 'proportioning', kneePressure: 2e6 + 3e6 * share(11), slope: 0.3 };
    const setUp = {
      ...exampleSetUp,
      rearValve,
      frontTire: tire,
      frontBrake: { ...frontBrake, caliper, rotor },
    };
    return { ...stop, setUp, speed: 22 + 12 * share(13) };
  });
}

function twinRows(coefficients, quickSeconds) {
  const folder = join(root, 'node_modules/.cache/standstill/quick-stop');
  const program = join(folder, 'plain-march');
  const source = join(root, 'benchmarks/quick-stop/plain-march.c');
  if (spawnSync('cc', ['--version']).status !== 0) return [];
  mkdirSync(folder, { recursive: true });
  execFileSync('cc', ['-O2', '-o', program, source, '-lm']);
  const stops = 30;
  const input = [stops, 0.001, startTemperature, ...coefficients].join(' ');
  const runs = Array.from({ length: 5 }, () => execFileSync(program, { input, encoding: 'utf8' }).split(' '));
  const seconds = Math.min(...runs.map(([time]) => Number(time))) / stops;
  const distance = Number(runs[0][1]);
  return [
    {
      name: 'the same plain march in C (cc -O2)',
      value: 1 / seconds,
      unit: 'stops/s a core',
      reference: 'quick stop, antilock',
      ratio: quickSeconds / seconds,
      note: `distance ${distance.toFixed(2)} m`,
    },
  ];
}

if (process.argv[1] === fileURLToPath(import.meta.url)) console.table(await quickStops());
