import { constantDecelerationStop, meanFullyDevelopedDeceleration } from '@standstill/braking';
import { published } from '../published.ts';

const start = 100 / 3.6;
const distanceFrom = (speed: number) => constantDecelerationStop({ speed, deceleration: 8 }).brakingDistance;
/** m from the start to where the car still has this share of its speed. */
const placeOf = (share: number) => distanceFrom(start) - distanceFrom(share * start);

const shared = {
  source: 'un-r13',
  basis: 'R',
  tolerance: 0.001,
  note: 'Tolerance 0.001, as the case states it.',
} as const;
const inputs = '100 km/h at a steady 8 m/s²';

published(
  { ...shared, id: '1-31a', quantity: `place where 80 km/h are left, ${inputs}`, printed: 17.361, unit: 'm' },
  () => placeOf(0.8),
);
published(
  { ...shared, id: '1-31b', quantity: `place where 10 km/h are left, ${inputs}`, printed: 47.743, unit: 'm' },
  () => placeOf(0.1),
);
published(
  {
    ...shared,
    id: '1-31d',
    quantity: 'mean fully developed deceleration between those places as printed',
    printed: 8,
    unit: 'm/s²',
  },
  () =>
    meanFullyDevelopedDeceleration({
      highSpeed: 0.8 * start,
      lowSpeed: 0.1 * start,
      distanceAtHigh: 17.361,
      distanceAtLow: 47.743,
    }),
);
