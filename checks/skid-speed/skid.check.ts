import { idealStop, speedFromSkid } from '@standstill/braking';
import { published } from '../published.ts';

const foot = 0.3048;
const mph = 0.44704;
const speed = (distance_ft: number, friction: number) =>
  speedFromSkid({ distance: distance_ft * foot, friction }) / mph;
const rounded = 'The source rounds 2 g in mph² per foot, 29.91, up to 30.';

for (const [id, friction, printed, follows] of [
  ['1-50a', 0.7, 29, 28.94],
  ['1-50b', 0.8, 31, 30.94],
] as const)
  published(
    {
      id,
      source: 'skid-speed',
      quantity: `speed from a skid of 40 ft at friction ${friction}, √(30 D f)`,
      printed,
      unit: 'mph',
      tolerance: 0.05,
      basis: 'R',
      expectedDifference: { follows, reason: rounded },
    },
    () => speed(40, friction),
  );

published(
  {
    id: '1-52',
    source: 'skid-speed',
    quantity: 'skid from 45 mph at friction 0.68',
    printed: 99.3,
    unit: 'ft',
    tolerance: 0.05,
    basis: 'R',
    expectedDifference: { follows: 99.55, reason: rounded },
  },
  () => idealStop({ speed: 45 * mph, friction: 0.68 }).distance / foot,
);

published(
  {
    id: '1-53a',
    source: 'skid-speed',
    quantity: 'where the 30 comes from: square of the speed from a skid of 1 ft at friction 1',
    printed: 29.97,
    unit: 'mph²',
    tolerance: 0.005,
    basis: 'R',
    expectedDifference: {
      follows: 29.91,
      reason: 'The source takes g = 32.2 ft/s² and 1.466 ft/s a mph; 2 × 32.174 / (22/15)² is 29.91.',
    },
  },
  () => speed(1, 1) ** 2,
);
