import { driverLimits } from '@standstill/braking';
import { toUnit } from '@standstill/units';
import { published } from '../published.ts';

const { low, high } = driverLimits.lawfulForce;
for (const [id, force, printed, basis] of [
  ['1-12a', low, 14.6, 'M'],
  ['1-12b', high, 112.4, 'R'],
] as const)
  published(
    {
      id,
      source: 'fmvss-135',
      quantity: `${force} N of pedal force in pounds`,
      printed,
      unit: 'lbf',
      tolerance: 0.1,
      basis,
      note: 'Tolerance 0.1 lbf, as the case states it.',
    },
    () => toUnit(force, 'lbf', 'force'),
  );
