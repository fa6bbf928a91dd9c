import { regulationDistance } from '@standstill/braking';
import { published } from '../published.ts';

for (const [id, test, name, printed] of [
  ['1-24', 'r13h-type-0-disconnected', 'Type-0, engine disconnected', 70],
  ['1-27', 'r13h-type-1-hot', 'Type-I, hot', 90],
] as const)
  published(
    {
      id,
      source: 'un-r13h',
      quantity: `longest distance from 100 km/h, ${name}`,
      printed,
      unit: 'm',
      tolerance: 0.05,
      basis: 'M',
    },
    () => regulationDistance(test, 100 / 3.6),
  );
