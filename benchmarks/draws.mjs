// What many draws of two set-ups cost: the stopping distance of each in the demo job, every uncertain number drawn that it
// follows from, the same draw for both. Against the straightforward way: settle each draw anew and march it, on one core. The growth over
// the number of draws and the memory that they take are rows of their own.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { quickStop, stopWorkspace } from '@standstill/braking';
import { drawOnPool, drawRange, readJob, settle } from '@standstill/workshop';
import { startDrawThreads } from '../apps/cli/dist/draws/draw-threads.js';
import { drawSheet } from '../packages/workshop/dist/draws/draw-sheet.js';
import { knownsOf } from '../packages/workshop/dist/draws/knowns-of.js';

const demo = new URL('../examples/hill-climb-coupe/job.yaml', import.meta.url);
const setUpIds = ['as-found', 'four-wheel-kit-with-valve'];
const many = 10_000;
const rounds = 5;
const reference = 'settle and quick stop, draw by draw, on one core';

export default async function draws() {
  const job = readDemo();
  const threads = startDrawThreads(availableParallelism());
  try {
    const plain = best(3, () => plainLoop(job, 2000)) * (many / 2000);
    const lean = best(rounds, () => drawRange(job, quick(many), 0, many));
    const pooled = await bestOf(rounds, () => drawOnPool(job, quick(many), threads.pool));
    const busy = await processorTime(() => drawOnPool(job, quick(many), threads.pool));
    const full = await bestOf(2, () => drawOnPool(job, fullOf(400), threads.pool));
    const fullAlone = best(1, () => drawRange(job, fullOf(100), 0, 100));
    const cores = threads.pool.hands.length;
    return [
      row(`${many} paired draws, the plain way`, plain, plain, knownsNote(job)),
      row(`${many} paired draws, one core`, lean, plain),
      row(`${many} paired draws, ${cores} threads`, pooled, plain, intervalsNote(job)),
      row('processor time of those, all threads', busy, plain),
      row(
        `${many} paired draws of the full stop, one core`,
        fullAlone * (many / 100),
        plain,
        'from 100 draws',
      ),
      row(
        `${many} paired draws of the full stop, ${cores} threads`,
        full * (many / 400),
        plain,
        'from 400 draws',
      ),
      ...(await growthRows(job, threads.pool)),
      ...memoryRows(),
      pairingRow(job),
    ];
  } finally {
    await threads.close();
  }
}

function row(name, value, plain, note) {
  return { name, value, unit: 's', reference, ratio: plain / value, ...(note === undefined ? {} : { note }) };
}

function readDemo() {
  const reading = readJob(readFileSync(demo, 'utf8'), { file: 'job.yaml' });
  if (!reading.ok) throw new Error('The demo job has mistakes.');
  return reading.job;
}

function quick(count, seed = 1) {
  return { question: 'distance', setUpIds, overrides: {}, draws: count, seed };
}

function fullOf(count) {
  return { ...quick(count), question: 'full-distance' };
}

/** The straightforward way, with nothing kept from draw to draw but the room that a stop is marched in. */
function plainLoop(job, count) {
  const sheet = drawSheet({ knowns: knownsOf(job, setUpIds), draws: count, seed: 1 });
  const march = stopWorkspace();
  const distances = setUpIds.map(() => new Float64Array(count));
  sheet.forEach((draw, index) => {
    setUpIds.forEach((id, k) => {
      const { setUp, road, foot, speed, startTemperature } = settle(job, id, draw);
      const rotorTemperatures = { front: startTemperature, rear: startTemperature };
      distances[k][index] = quickStop({ setUp, road, foot, speed, rotorTemperatures }, march).distance;
    });
  });
  return distances;
}

/** s, the best of some rounds. */
function best(count, work) {
  let least = Infinity;
  for (let round = 0; round < count; round += 1) {
    const start = process.hrtime.bigint();
    work();
    least = Math.min(least, Number(process.hrtime.bigint() - start) / 1e9);
  }
  return least;
}

async function bestOf(count, work) {
  let least = Infinity;
  for (let round = 0; round < count; round += 1) {
    const start = process.hrtime.bigint();
    await work();
    least = Math.min(least, Number(process.hrtime.bigint() - start) / 1e9);
  }
  return least;
}

/** s of all threads together: what the machine's other work does not lengthen much. */
async function processorTime(work) {
  const before = process.cpuUsage();
  await work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
}

async function growthRows(job, pool) {
  const counts = [1000, 3000, 10_000, 30_000, 100_000];
  const rows = [];
  for (const count of counts) {
    const seconds = await bestOf(count > 10_000 ? 1 : 3, () => drawOnPool(job, quick(count), pool));
    rows.push({ count, perDraw: (1e6 * seconds) / count });
  }
  const first = rows[0].perDraw;
  return rows.map(({ count, perDraw }) => ({
    name: `growth: a paired draw among ${count.toLocaleString('en-US')}`,
    value: perDraw,
    unit: 'µs',
    reference: 'a paired draw among 1,000',
    ratio: perDraw / first,
  }));
}

/** MB that a process of its own grows by at most while it draws, over one that does everything but draw. */
function memoryRows() {
  const counts = [1000, 10_000, 100_000];
  const growths = counts.map((count) => Math.min(peak(count), peak(count), peak(count)));
  return counts.map((count, index) => ({
    name: `memory that ${count.toLocaleString('en-US')} paired draws take`,
    value: growths[index],
    unit: 'MB',
    reference: '1,000 paired draws',
    ratio: growths[index] / growths[0],
    note: `of them ${((2 * 8 * count) / 1e6).toFixed(2)} MB are the distances kept`,
  }));
}

/** MB, as such a process says. */
function peak(count) {
  const { stdout, stderr } = spawnSync(
    process.execPath,
    [fileURLToPath(import.meta.url), 'peak', String(count)],
    {
      encoding: 'utf8',
    },
  );
  if (stdout === '') throw new Error(stderr);
  return Number(stdout);
}

function peakGrowth(count) {
  const job = readDemo();
  drawRange(job, quick(400), 0, 400);
  const before = process.resourceUsage().maxRSS;
  drawRange(job, quick(count), 0, count);
  return (process.resourceUsage().maxRSS - before) / 1000;
}

function pairingRow(job) {
  const [first, second] = drawRange(job, quick(2000), 0, 2000).bySetUp;
  const [, apart] = drawRange(job, quick(2000, 2), 0, 2000).bySetUp;
  const paired = variance(second.map((value, index) => value - first[index]));
  const unpaired = variance(apart.map((value, index) => value - first[index]));
  return {
    name: 'variance of the difference, draws paired',
    value: paired,
    unit: 'm²',
    reference: 'unpaired draws',
    ratio: paired / unpaired,
    note: `unpaired, it would take ${(unpaired / paired).toFixed(1)} times as many draws`,
  };
}

function variance(values) {
  const sound = values.filter((value) => Number.isFinite(value));
  const mean = sound.reduce((sum, value) => sum + value, 0) / sound.length;
  return sound.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (sound.length - 1);
}

function knownsNote(job) {
  return `${knownsOf(job, setUpIds).length} uncertain numbers; from 2,000 draws`;
}

function inside(values) {
  const sorted = values.filter((value) => Number.isFinite(value)).sort();
  const at = (share) => sorted[Math.round(share * (sorted.length - 1))].toFixed(1);
  return `${at(0.025)} to ${at(0.975)} m`;
}

function intervalsNote(job) {
  const [first, second] = drawRange(job, quick(many), 0, many).bySetUp;
  return `95 %: ${inside(first)}, ${inside(second)}, difference ${inside(second.map((value, index) => value - first[index]))}`;
}

if (process.argv[2] === 'peak') console.log(peakGrowth(Number(process.argv[3])));
else if (process.argv[1] === fileURLToPath(import.meta.url)) console.table(await draws());
