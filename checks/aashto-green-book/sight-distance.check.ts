import { constantDecelerationStop } from '@standstill/braking';
import { published } from '../published.ts';

const foot = 0.3048;

/** The design stop: 2.5 s of reaction, then 11.2 ft/s². */
function stop(speed_mph: number, grade = 0) {
  const speed = speed_mph * 0.44704;
  return constantDecelerationStop({ speed, deceleration: 11.2 * foot, grade, reactionTime: 2.5 });
}

const coarse =
  'The table has 1.47 ft/s a mph where the exact figure is 22/15, 1.075 V² / a for the braking distance, and adds rounded parts; what follows is exact.';
const steep =
  'The table divides V² by 30 (a / 32.2 + G), with 30 for 29.91 and the slope G for its sine; what follows is exact.';
const metric =
  'The table has 0.039 V² / a where the exact figure is V² / (25.92 a) = 0.03858 V² / a, and 0.278 for 1 / 3.6; what follows is exact.';

interface Row {
  readonly id: string;
  readonly quantity: string;
  readonly printed: number;
  readonly tolerance?: number;
  /** Where the table's rounded constants show. */
  readonly follows?: number;
  readonly reason?: string;
  readonly ours: () => number;
}

function braking(id: string, speed: number, printed: number, follows?: number): Row {
  const quantity = `braking distance from ${speed} mph at 11.2 ft/s²`;
  const ours = () => stop(speed).brakingDistance / foot;
  return { id, quantity, printed, ...(follows === undefined ? {} : { follows }), reason: coarse, ours };
}

function sight(id: string, speed: number, printed: number, follows: number): Row {
  const quantity = `stopping sight distance from ${speed} mph, 2.5 s of reaction`;
  return { id, quantity, printed, follows, reason: coarse, ours: () => stop(speed).distance / foot };
}

function onGrade(id: string, speed: number, grade: number, printed: number): Row {
  const quantity = `stopping sight distance from ${speed} mph on a grade of ${100 * grade} %`;
  return { id, quantity, printed, tolerance: 0.5, ours: () => stop(speed, grade).distance / foot };
}

const rows: readonly Row[] = [
  braking('2-01a', 30, 86.4),
  sight('2-01b', 30, 196.7, 196.4),
  braking('2-02a', 50, 240, 240.1),
  sight('2-02b', 50, 423.8, 423.4),
  braking('2-03a', 60, 345.5, 345.7),
  sight('2-03b', 60, 566, 565.7),
  braking('2-04a', 20, 38.4),
  sight('2-04b', 20, 111.9, 111.7),
  braking('2-04c', 25, 60),
  sight('2-04d', 25, 151.9, 151.7),
  ...(
    [
      ['a', -0.03, 377.6, 378.3],
      ['b', -0.06, 416.9, 417.6],
      ['c', -0.09, 465.4, 465.6],
    ] as const
  ).map(([letter, grade, printed, follows]) => ({
    id: `2-08${letter}`,
    quantity: `braking distance from 60 mph on a grade of ${100 * grade} %`,
    printed,
    follows,
    reason: steep,
    ours: () => stop(60, grade).brakingDistance / foot,
  })),
  onGrade('2-08d', 60, -0.03, 598),
  onGrade('2-08e', 60, -0.06, 638),
  onGrade('2-08f', 60, -0.09, 686),
  {
    ...onGrade('2-10a', 30, -0.06, 215),
    printed: 214.5,
    tolerance: 0.05,
    follows: 214.4,
    reason: steep,
  },
  onGrade('2-10b', 30, 0.06, 184),
];

for (const { id, quantity, printed, tolerance = 0.05, follows, reason = '', ours } of rows)
  published(
    {
      id,
      source: 'aashto-green-book',
      quantity,
      printed,
      unit: 'ft',
      tolerance,
      basis: 'M',
      ...(follows === undefined ? {} : { expectedDifference: { follows, reason } }),
    },
    ours,
  );

for (const [letter, speed, printed, follows] of [
  ['a', 50, 63.5, 63.1],
  ['b', 100, 184.2, 182.9],
  ['c', 120, 248.6, 246.7],
] as const)
  published(
    {
      id: `2-11${letter}`,
      source: 'aashto-green-book',
      quantity: `stopping sight distance from ${speed} km/h at 3.4 m/s², 2.5 s of reaction`,
      printed,
      unit: 'm',
      tolerance: 0.05,
      basis: 'M',
      expectedDifference: { follows, reason: metric },
    },
    () => constantDecelerationStop({ speed: speed / 3.6, deceleration: 3.4, reactionTime: 2.5 }).distance,
  );
