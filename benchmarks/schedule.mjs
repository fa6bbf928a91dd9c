// How long a fade schedule of 20 stops with cool-downs takes (target: under 60 ms), against the same heat carried through the
// same corners by the plainest scheme, Euler's explicit one at the longest step that stays stable; and what the burnish takes.
import { fileURLToPath } from 'node:url';
import { burnish, coolDown, equalStops, exampleRoad, exampleSetUp, runSchedule } from '@standstill/braking';
import { cornerNumbers, explicitMarch } from './schedule/explicit-march.mjs';

const rounds = 9;
const foot = { force: 300, rampTime: 0.2 };
const fade = [
  ...equalStops({ count: 20, speed: 35, interval: 45, foot }),
  ...coolDown({ speed: 20, driving: 300, parked: 900 }),
];
const onRoad = { setUp: exampleSetUp, road: exampleRoad };

export default async function schedules() {
  const outcome = runSchedule({ ...onRoad, events: fade });
  const numbers = cornerNumbers(exampleSetUp);
  const best = { fade: Infinity, recorded: Infinity, burnish: Infinity, plain: Infinity };
  let plain;
  for (let round = 0; round < rounds; round += 1) {
    best.fade = Math.min(
      best.fade,
      milliseconds(4, () => runSchedule({ ...onRoad, events: fade })),
    );
    best.recorded = Math.min(
      best.recorded,
      milliseconds(4, () => runSchedule({ ...onRoad, events: fade, isRecorded: true })),
    );
    if (round < 3) {
      best.burnish = Math.min(
        best.burnish,
        milliseconds(1, () => runSchedule({ ...onRoad, events: burnish() })),
      );
      best.plain = Math.min(
        best.plain,
        milliseconds(1, () => (plain = explicitMarch(numbers, outcome))),
      );
    }
  }
  const reference = 'the heat alone by explicit steps of stable length';
  const row = (name, key, note) => ({
    name,
    value: best[key],
    unit: 'ms',
    reference,
    ratio: best[key] / best.plain,
    ...(note === undefined ? {} : { note }),
  });
  const ours = outcome.front.bulk.toFixed(0);
  return [
    row('fade schedule, 20 stops with cool-downs', 'fade', `hottest front ring ${ours} °C`),
    row('the same with its course over time', 'recorded'),
    row(reference, 'plain', `hottest front ring ${plain.hottest.toFixed(0)} °C, ${plain.steps} steps`),
    row('burnish of FMVSS 135, 200 stops', 'burnish'),
  ];
}

function milliseconds(count, work) {
  const from = performance.now();
  for (let i = 0; i < count; i += 1) work();
  return (performance.now() - from) / count;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) console.table(await schedules());
