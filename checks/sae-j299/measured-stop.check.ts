import {
  correctedDistance,
  findStops,
  recordedTable,
  speedOffNominal,
  squaredRatioBias,
} from '@standstill/logs';
import { published } from '../published.ts';

published(
  {
    id: '1-40',
    source: 'sae-j299',
    quantity: '43.0 m from 101.5 km/h, corrected to 100 km/h by the squared ratio',
    printed: 41.74,
    unit: 'm',
    tolerance: 0.01,
    basis: 'X',
  },
  () => correctedDistance({ distance: 43, entrySpeed: 101.5 / 3.6, nominalSpeed: 100 / 3.6 }),
);

/** S = 0.10 V + 0.0060 V² (m, km/h): a delay of 0.36 s and a steady deceleration of 1/(25.92 × 0.0060). */
const regulated = {
  delay: 0.36,
  deceleration: 1 / (25.92 * 0.006),
  entrySpeed: 102 / 3.6,
  nominalSpeed: 100 / 3.6,
};

published(
  {
    id: '1-42a',
    source: 'sae-j299',
    quantity: '72.62 m from 102 km/h, corrected to 100 km/h',
    printed: 69.8,
    unit: 'm',
    tolerance: 0.005,
    basis: 'X',
  },
  () => correctedDistance({ ...regulated, distance: 0.1 * 102 + 0.006 * 102 ** 2 }),
);

published(
  {
    id: '1-42b',
    source: 'sae-j299',
    quantity: 'bias of that correction, from the delay within the distance',
    printed: -0.28,
    unit: '%',
    tolerance: 0.005,
    basis: 'X',
  },
  () => 100 * squaredRatioBias(regulated),
);

for (const [id, entry, accepted] of [
  ['1-38a', 112, 1],
  ['1-38b', 112.1, 0],
] as const)
  published(
    {
      id,
      source: 'sae-j299',
      quantity: `whether an approach at ${entry} km/h is within 12 km/h of a target of 100 km/h (1 yes, 0 no)`,
      printed: accepted,
      unit: '',
      tolerance: 0.5,
      basis: 'R',
    },
    () => (speedOffNominal(entry / 3.6, 100 / 3.6) === 'within' ? 1 : 0),
  );

published(
  {
    id: '1-38c',
    source: 'sae-j299',
    quantity:
      'delay between trigger and speed that the interval of a distance allows for where none is given',
    printed: 20,
    unit: 'ms',
    tolerance: 0.5,
    basis: 'R',
  },
  () => {
    const time = Float64Array.from({ length: 8001 }, (_, i) => i / 1000);
    const speed = time.map((t) => Math.max(0, Math.min(25, 25 - 8 * (t - 2))));
    const table = recordedTable({ time, speed, brakeApplied: time.map((t) => (t >= 2 ? 1 : 0)) }, 'made');
    const [stop] = findStops(table);
    return (1000 * (stop?.distanceStandardError ?? NaN)) / (stop?.entrySpeed ?? NaN);
  },
);
