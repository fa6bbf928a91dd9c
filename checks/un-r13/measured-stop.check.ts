import { fullyDevelopedDeceleration, speedOffNominal } from '@standstill/logs';
import { published } from '../published.ts';

/** 100 km/h at a steady 8 m/s², sampled at 100 Hz. */
const time = Float64Array.from({ length: 349 }, (_, i) => Math.min(i / 100, 100 / 3.6 / 8));
const speed = time.map((t) => Math.max(0, 100 / 3.6 - 8 * t));

published(
  {
    id: '1-31c',
    source: 'un-r13',
    quantity: 'mean fully developed deceleration of samples of a stop from 100 km/h at a steady 8 m/s²',
    printed: 8,
    unit: 'm/s²',
    tolerance: 0.001,
    basis: 'R',
    note: 'Tolerance 0.001 m/s², as the case states it.',
  },
  () => fullyDevelopedDeceleration({ time, speed }, 100 / 3.6) ?? NaN,
);

for (const [id, entry, accepted] of [
  ['1-33a', 98, 1],
  ['1-33b', 97.9, 0],
] as const)
  published(
    {
      id,
      source: 'un-r13',
      quantity: `whether a stop from ${entry} km/h counts for 100 km/h (1 yes, 0 no)`,
      printed: accepted,
      unit: '',
      tolerance: 0.5,
      basis: 'R',
    },
    () => (speedOffNominal(entry / 3.6, 100 / 3.6) === 'within' ? 1 : 0),
  );
