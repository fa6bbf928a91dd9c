import { quickStop } from '@standstill/braking';
import { plainStop } from '../plain-car.ts';
import { published } from '../published.ts';

const foot = 0.3048;
const pound = 4.448222;

/** The book takes g = 32.2 ft/s² and 88 ft/s for 60 mph: the mass is set so that the weight is the book's. */
const stop = () =>
  quickStop(
    plainStop({
      mass: (3635 * pound) / (32.2 * foot),
      speed: 88 * foot,
      brakeForce: 2000 * pound,
      rampTime: 0,
    }),
  );

const shared = {
  source: 'gillespie',
  basis: 'M',
  note: 'Through the whole chain from the foot on; weight taken with g = 32.2 ft/s² as the book does.',
} as const;
const inputs = 'truck of 3635 lb from 60 mph under 2000 lb of brake force';

published(
  {
    ...shared,
    id: '3-01a',
    quantity: `deceleration, ${inputs}`,
    printed: 17.7,
    unit: 'ft/s²',
    tolerance: 0.05,
  },
  () => stop().meanDeceleration / foot,
);
published(
  { ...shared, id: '3-01b', quantity: `distance, ${inputs}`, printed: 218.6, unit: 'ft', tolerance: 0.05 },
  () => stop().distance / foot,
);
published(
  { ...shared, id: '3-01c', quantity: `time, ${inputs}`, printed: 4.97, unit: 's', tolerance: 0.005 },
  () => stop().time,
);
