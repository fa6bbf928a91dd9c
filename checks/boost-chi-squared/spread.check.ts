import { spreadInterval } from '@standstill/numerics';
import { published } from '../published.ts';

const shared = { source: 'boost-chi-squared', basis: 'R' } as const;
const interval = (count: number, standardDeviation = 1): ReturnType<typeof spreadInterval> =>
  spreadInterval({ standardDeviation, degreesOfFreedom: count - 1 });

/** Values, low and high end of the 95 % interval of a standard deviation of 1. */
const table = [
  [2, 0.4461, 31.9102],
  [3, 0.5207, 6.2847],
  [4, 0.5665, 3.7285],
  [5, 0.5991, 2.8736],
  [6, 0.6242, 2.4526],
  [8, 0.6612, 2.0353],
  [10, 0.6878, 1.8256],
  [20, 0.7605, 1.4606],
  [100, 0.878, 1.1617],
] as const;

for (const [count, low, high] of table) {
  const figure = { ...shared, unit: '', tolerance: 0.00005 };
  published(
    { ...figure, id: `${count}-low`, quantity: `spread of ${count} values, 95 %, low end`, printed: low },
    () => interval(count).low,
  );
  published(
    { ...figure, id: `${count}-high`, quantity: `spread of ${count} values, 95 %, high end`, printed: high },
    () => interval(count).high,
  );
}

const gear = { ...shared, unit: 'in', tolerance: 5e-6 };
published(
  { ...gear, id: 'gear-low', quantity: 'GEAR.DAT, 100 values, s 0.0062789: low end', printed: 0.00551 },
  () => interval(100, 0.0062789).low,
);
published(
  { ...gear, id: 'gear-high', quantity: 'GEAR.DAT, 100 values, s 0.0062789: high end', printed: 0.00729 },
  () => interval(100, 0.0062789).high,
);
