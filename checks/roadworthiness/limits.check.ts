import { axleImbalance, roadworthinessLimits } from '@standstill/braking';
import { published } from '../published.ts';

for (const [id, key, quantity, printed] of [
  [
    '1-54a',
    'serviceEffort',
    'least service brake effort over weight, cars first used from September 2010',
    58,
  ],
  ['1-54b', 'parkingEffort', 'least parking brake effort over weight', 16],
  ['1-54c', 'imbalance', 'imbalance of an axle above which it fails', 30],
] as const)
  published(
    {
      id,
      source: 'roadworthiness',
      quantity,
      printed,
      unit: '%',
      tolerance: 0.5,
      basis: 'R',
      evidence: 'transcription',
    },
    () => 100 * roadworthinessLimits[key],
  );

published(
  {
    id: '1-54d',
    source: 'roadworthiness',
    quantity: 'imbalance of an axle with 2.0 kN left and 1.4 kN right: just at the limit',
    printed: 30,
    unit: '%',
    tolerance: 0.5,
    basis: 'X',
  },
  () => 100 * axleImbalance(2000, 1400),
);
