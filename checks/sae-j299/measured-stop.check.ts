import { correctedDistance, speedOffNominal, squaredRatioBias } from '@standstill/logs';
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
    note: 'Tolerance 0.01 m, as the case states it.',
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
