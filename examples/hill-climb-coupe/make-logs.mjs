// Makes the demo logs: the model's stops of the demo job, driven by an invented driver, seen through a sensor model.
//
//   node examples/hill-climb-coupe/make-logs.mjs           writes before.csv, after.csv and truth.json beside this file
//   node examples/hill-climb-coupe/make-logs.mjs --check   says whether the files beside it are what it would write
//
// `before` is the car as found. `after` is the four-wheel kit with the rear valve AND new, grippier tires: on the day of the
// second test the owner had put on new tires. That is the point of the demo: the logs show a large gain, and the brakes
// explain only a part of it. The numbers put in are written to truth.json, so that anyone can hold the analysis to them.
import { readFileSync, writeFileSync } from 'node:fs';
import { traceStop } from '@standstill/braking';
import { sensorModel } from '@standstill/logs';
import { randomStream } from '@standstill/numerics';
import { readJob, settle } from '@standstill/workshop';

const beside = (name) => new URL(name, import.meta.url);
const milesPerHour = 0.44704;
const sensor = {
  rate: 20,
  latency: 0.02,
  filterTime: 0.03,
  noise: 0.03,
  correlatedNoise: 0.04,
  correlationTime: 0.4,
  resolution: 0.01 * milesPerHour,
};

/** What the day was like; `grip` multiplies the tires' peak friction, `warming` is added to it with every run. */
const days = {
  before: { setUp: 'as-found', runs: 7, grip: 1.0, warming: 0.002, seed: 5101, start: '10:12' },
  after: {
    setUp: 'four-wheel-kit-with-valve',
    runs: 7,
    grip: 1.14,
    warming: 0.002,
    seed: 5202,
    start: '14:40',
  },
};

function makeDay(job, day) {
  const random = randomStream(day.seed, 'demo');
  const dense = { time: [], speed: [], brakeApplied: [] };
  const truth = [];
  let clock = 0;
  const add = (time, speed, applied) => {
    dense.time.push(time);
    dense.speed.push(Math.max(0, speed));
    dense.brakeApplied.push(applied);
  };
  add(0, 0, 0);
  for (let run = 0; run < day.runs; run += 1) {
    const entry = (60.3 + 0.45 * random.normal()) * milesPerHour;
    clock = drive(add, clock, entry);
    const { summary, trace } = brake(job, day, run, entry, random);
    const isNew = (i) => i === 0 || trace.time[i] - trace.time[i - 1] > 1e-6;
    for (let i = 0; i < trace.time.length; i += 1)
      if (isNew(i)) add(clock + 0.001 + trace.time[i], trace.speed[i], 1);
    clock += 0.001 + trace.time[trace.time.length - 1];
    truth.push({ run: run + 1, entrySpeed_m_s: entry, distance_m: summary.distance });
    clock = stand(add, clock, 4 + 2 * random.uniform());
  }
  return { dense, truth, random };
}

/** Pulls away to the entry speed and holds it for two seconds, foot off the brake. */
function drive(add, from, entry) {
  const pull = 9;
  for (let t = 0.02; t <= pull; t += 0.02) add(from + t, entry * Math.sin((Math.PI / 2) * (t / pull)), 0);
  for (let t = 0.02; t <= 2; t += 0.02) add(from + pull + t, entry, 0);
  return from + pull + 2;
}

/** Foot still on the brake for a second, then off. */
function stand(add, from, duration) {
  for (let t = 0.02; t <= duration; t += 0.02) add(from + t, 0, t < 1 ? 1 : 0);
  return from + duration;
}

function brake(job, day, run, entry, random) {
  const { setUp, road, foot } = settle(job, day.setUp);
  const grip = day.grip + day.warming * run + 0.008 * random.normal();
  const warm = 75 + 12 * random.uniform();
  return traceStop({
    setUp,
    road: { ...road, surfaceFactor: road.surfaceFactor * grip },
    foot: {
      force: foot.force * (1 + 0.03 * random.normal()),
      rampTime: foot.rampTime * (1 + 0.1 * random.normal()),
    },
    speed: entry,
    driverShare: Math.min(0.98, 0.9 + 0.012 * random.normal()),
    rotorTemperatures: { front: warm, rear: warm - 8 },
  });
}

function csv(day, { dense, random }) {
  const log = sensorModel(dense, sensor, random);
  const head = [
    '# Invented: made by the model through a sensor model; not measured on a road.',
    `# Set-up: ${day.setUp}. Local start ${day.start}. Seed ${day.seed}.`,
    'Time [s],Speed [mph],Brake switch',
  ];
  const rows = Array.from(log.time, (time, i) => {
    const speed = (log.speed[i] / milesPerHour).toFixed(2);
    return `${time.toFixed(3)},${speed},${log.brakeApplied[i]}`;
  });
  return [...head, ...rows, ''].join('\n');
}

const reading = readJob(readFileSync(beside('job.yaml'), 'utf8'), { file: 'job.yaml' });
if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
const truths = {};
const files = {};
for (const [name, day] of Object.entries(days)) {
  const made = makeDay(reading.job, day);
  files[`${name}.csv`] = csv(day, made);
  truths[name] = { ...day, stops: made.truth };
}
files['truth.json'] =
  `${JSON.stringify({ note: 'What was put into the logs; invented.', ...truths }, null, 2)}\n`;

const check = process.argv.includes('--check');
const stale = Object.entries(files).filter(([name, text]) => {
  if (!check) writeFileSync(beside(name), text);
  return check && readFileSync(beside(name), 'utf8') !== text;
});
if (stale.length > 0) {
  console.error(
    `not what the model makes now: ${stale.map(([name]) => name).join(', ')}; run without --check`,
  );
  process.exit(1);
}
console.log(check ? 'the demo logs are what the model makes now' : `wrote ${Object.keys(files).join(', ')}`);
