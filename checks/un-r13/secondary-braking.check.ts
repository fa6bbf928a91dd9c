import { steadyDeceleration } from '@standstill/braking';
import { published } from '../published.ts';

const speed = 80 / 3.6;
/** m: S = 0.1 V + 2 V² / 150 of the secondary test of cars, V in km/h. */
const distance = 0.1 * 80 + (2 * 80 ** 2) / 150;

published(
  {
    id: '1-29a',
    source: 'un-r13',
    quantity: 'mean fully developed deceleration that the secondary test from 80 km/h asks for',
    printed: 2.9,
    unit: 'm/s²',
    tolerance: 0.05,
    basis: 'R',
  },
  () => steadyDeceleration({ speed, distance, buildUp: 0.1 * 80 }),
);
