import {
  axleLoads,
  exampleRoad,
  exampleSetUp,
  standardGravity,
  wheelLoads,
  type Car,
} from '@standstill/braking';
import { published } from '../published.ts';

/** The source takes g = 9.8 m/s²: the mass is set so that the weight is the source's. */
const car: Car = {
  ...exampleSetUp.car,
  mass: (1160 * 9.8) / standardGravity,
  wheelbase: 2.54,
  frontLoadShare: (2.54 - 1.02) / 2.54,
};
const atRest = { car, deceleration: 0, speed: 0, road: exampleRoad };
const source = 'statics-1160';
const note = 'Weight taken with g = 9.8 m/s² as the source does.';

published(
  {
    id: '3-10a',
    source,
    quantity: 'load of the front pair',
    printed: 6803,
    unit: 'N',
    tolerance: 0.5,
    basis: 'X',
    note,
  },
  () => axleLoads(atRest).front,
);
published(
  {
    id: '3-10b',
    source,
    quantity: 'load of the rear pair',
    printed: 4565,
    unit: 'N',
    tolerance: 0.5,
    basis: 'X',
    note,
  },
  () => axleLoads(atRest).rear,
);
published(
  {
    id: '3-10c',
    source,
    quantity: 'load of each front wheel',
    printed: 3401,
    unit: 'N',
    tolerance: 0.5,
    basis: 'X',
    note,
  },
  () => wheelLoads(atRest)[0],
);
published(
  {
    id: '3-10d',
    source,
    quantity: 'load of each rear wheel',
    printed: 2283,
    unit: 'N',
    tolerance: 0.5,
    basis: 'X',
    note,
  },
  () => wheelLoads(atRest)[3],
);
