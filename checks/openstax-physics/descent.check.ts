import { lumpedRise } from '@standstill/braking';
import { published } from '../published.ts';

/** Example 14.2: a truck of 10,000 kg goes down 75 m at a steady speed; its brakes are 100 kg of 800 J/(kg K). */
published(
  {
    id: '14.2',
    source: 'openstax-physics',
    quantity: 'rise of the brakes of a truck, 10,000 kg down 75 m into 100 kg of 800 J/(kg K), g = 9.80 m/s²',
    printed: 92,
    unit: 'K',
    tolerance: 0.5,
    basis: 'M',
    note: 'Formula and inputs were read, the printed answer is from memory.',
  },
  () => lumpedRise({ energy: 10_000 * 9.8 * 75, mass: 100, specificHeat: 800 }),
);
