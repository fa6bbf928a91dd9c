import { exampleRoad, exampleSetUp, heatingSnubs, runSchedule } from '@standstill/braking';
import { published } from '../published.ts';

const driven = () =>
  runSchedule({ setUp: exampleSetUp, road: exampleRoad, events: heatingSnubs({ topSpeed: 60 }) }).stops;

for (const [letter, what, printed, unit, tolerance, ours] of [
  ['e', 'braking time of one snub, driven by our schedule', 5.56, 's', 0.005, () => driven()[0]?.time ?? NaN],
  [
    'f',
    'from the first to the last of 15 snubs every 45 s',
    630,
    's',
    0.5,
    () => driven()[14]?.startTime ?? NaN,
  ],
] as const)
  published(
    { id: `1-17${letter}`, source: 'fmvss-135', quantity: what, printed, unit, tolerance, basis: 'X' },
    ours,
  );
