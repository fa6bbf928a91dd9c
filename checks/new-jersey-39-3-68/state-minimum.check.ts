import { constantDecelerationStop } from '@standstill/braking';
import { published } from '../published.ts';

const foot = 0.3048;
const twenty = 20 * 0.44704;
const distance = (deceleration: number) =>
  constantDecelerationStop({ speed: twenty, deceleration: deceleration * foot }).brakingDistance / foot;
const shared = { source: 'new-jersey-39-3-68', unit: 'ft', tolerance: 0.5, basis: 'R' } as const;

published(
  {
    ...shared,
    id: '1-46a',
    quantity: 'distance from 20 mph at 14 ft/s²',
    printed: 30,
    expectedDifference: {
      follows: 30.7,
      reason: 'The statute calls its distances approximate; v²/(2a) gives 29.33² / 28 = 30.7 ft.',
    },
  },
  () => distance(14),
);
published({ ...shared, id: '1-46b', quantity: 'distance from 20 mph at 9.5 ft/s²', printed: 45 }, () =>
  distance(9.5),
);
