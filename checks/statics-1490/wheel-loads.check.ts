import { exampleRoad, exampleSetUp, standardGravity, wheelLoads, type Car } from '@standstill/braking';
import { published } from '../published.ts';

/** The source takes g = 9.8 m/s²: the mass is set so that the weight is the source's. */
const car: Car = {
  ...exampleSetUp.car,
  mass: (1490 * 9.8) / standardGravity,
  wheelbase: 3.1,
  frontLoadShare: (3.1 - 1.1) / 3.1,
};
const loads = () => wheelLoads({ car, deceleration: 0, speed: 0, road: exampleRoad });
const source = 'statics-1490';
const note = 'Weight taken with g = 9.8 m/s² as the source does.';

published(
  {
    id: '3-12a',
    source,
    quantity: 'load of each front wheel, 1490 kg, L 3.1 m, center of gravity 1.1 m behind the front axle',
    printed: 4711,
    unit: 'N',
    tolerance: 0.5,
    basis: 'R',
    note,
    expectedDifference: {
      follows: 4710,
      reason: 'The source prints 4711; its own inputs give 1490 × 9.8 × 2.0 / 3.1 / 2 = 4710.3, so 4710.',
    },
  },
  () => loads()[0],
);
published(
  {
    id: '3-12b',
    source,
    quantity: 'load of each rear wheel',
    printed: 2591,
    unit: 'N',
    tolerance: 0.5,
    basis: 'R',
    note,
  },
  () => loads()[2],
);
