import { drumClasses } from '@standstill/braking';
import { published } from '../published.ts';

for (const [id, key, printed] of [
  ['simplex', 'simplex', 2],
  ['duplex', 'duplex', 3],
  ['duo-servo', 'duoServo', 5],
] as const)
  published(
    {
      id,
      source: 'bosch-drums',
      quantity: `brake factor at a lining friction of 0.38, ${drumClasses[key].title.toLowerCase()}`,
      printed,
      unit: '',
      tolerance: 0.05,
      basis: 'M',
      evidence: 'transcription',
      note: 'The level of our classes; only how it grows with friction comes from the shoe formula.',
    },
    () => drumClasses[key].brakeFactor.value,
  );
