import { linearBuildUpStop, quickStop } from '@standstill/braking';
import { plainStop } from '../plain-car.ts';
import { published } from '../published.ts';

const speed = 100 / 3.6;
const closed = () => linearBuildUpStop({ speed, buildUpTime: 0.4, deceleration: 8.5 });
const marched = () => quickStop(plainStop({ mass: 1200, speed, brakeForce: 1200 * 8.5, rampTime: 0.4 }));

const shared = { source: 'textbook-formula', basis: 'X' } as const;
const inputs = '100 km/h, deceleration rising to 8.5 m/s² in 0.40 s';

published(
  { ...shared, id: '1-43a', quantity: `distance, ${inputs}`, printed: 50.89, unit: 'm', tolerance: 0.005 },
  () => closed().distance,
);
published(
  { ...shared, id: '1-43b', quantity: `time, ${inputs}`, printed: 3.468, unit: 's', tolerance: 0.0005 },
  () => closed().time,
);
published(
  {
    ...shared,
    id: '1-43c',
    quantity: `speed when the ramp ends, ${inputs}`,
    printed: 93.9,
    unit: 'km/h',
    tolerance: 0.05,
  },
  () => closed().speedAfterBuildUp * 3.6,
);

const through = `${inputs}; through the quick stop`;
published(
  { ...shared, id: '1-43d', quantity: `distance, ${through}`, printed: 50.89, unit: 'm', tolerance: 0.005 },
  () => marched().distance,
);
published(
  { ...shared, id: '1-43e', quantity: `time, ${through}`, printed: 3.468, unit: 's', tolerance: 0.0005 },
  () => marched().time,
);
published(
  {
    ...shared,
    id: '1-43f',
    quantity: `mean deceleration over the distance, ${through}`,
    printed: 7.581,
    unit: 'm/s²',
    tolerance: 0.0005,
  },
  () => marched().meanDeceleration,
);
published(
  {
    ...shared,
    id: '1-43g',
    quantity: `mean fully developed deceleration, ${through}`,
    printed: 8.5,
    unit: 'm/s²',
    tolerance: 0.0005,
  },
  () => marched().meanFullyDevelopedDeceleration,
);
