import { constantDecelerationStop } from '@standstill/braking';
import { published } from '../published.ts';

const foot = 0.3048;

published(
  {
    id: '1-45',
    source: 'fmvss-105',
    quantity: 'distance from 60 mph at 20 ft/s²',
    printed: 194,
    unit: 'ft',
    tolerance: 0.5,
    basis: 'R',
    note: 'Tolerance 0.5 ft, as the case states it.',
  },
  () => constantDecelerationStop({ speed: 88 * foot, deceleration: 20 * foot }).brakingDistance / foot,
);
