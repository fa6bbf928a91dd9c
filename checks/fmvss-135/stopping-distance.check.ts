import { regulationDistance } from '@standstill/braking';
import { published } from '../published.ts';

const mile = 1609.344;

for (const [id, test, name, printed, basis] of [
  ['1-01', 'fmvss135-cold', 'cold effectiveness', 70, 'R'],
  ['1-06', 'fmvss135-antilock-failed', 'antilock failed', 85, 'M'],
  ['1-08', 'fmvss135-circuit-failed', 'circuit or assist failed', 168, 'M'],
] as const)
  published(
    {
      id,
      source: 'fmvss-135',
      quantity: `longest distance from 100 km/h, ${name}`,
      printed,
      unit: 'm',
      tolerance: 0.05,
      basis,
    },
    () => regulationDistance(test, 100 / 3.6),
  );

published(
  {
    id: '1-03',
    source: 'fmvss-135',
    quantity: 'longest distance from 60 mph, cold effectiveness',
    printed: 65.6,
    unit: 'm',
    tolerance: 0.1,
    basis: 'X',
    note: 'Tolerance 0.1 m, as the case states it.',
  },
  () => regulationDistance('fmvss135-cold', (60 * mile) / 3600),
);
