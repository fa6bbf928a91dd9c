import { permutationTest } from '@standstill/numerics';
import { published } from '../published.ts';

/** Eight values in two groups; the p was read, the values are from memory of a later edition and give it. */
const found = permutationTest([7, 8, 11, 30], [0, 2, 5, 9], { seed: 1 });

const shared = { source: 'lane-randomization', unit: '', basis: 'M' } as const;

published(
  {
    ...shared,
    id: 'two-tailed',
    quantity: 'two groups of four, p both ways',
    printed: 0.0857,
    tolerance: 0.00005,
  },
  () => found.p,
);
published(
  { ...shared, id: 'ways', quantity: 'ways to divide them', printed: 70, tolerance: 1e-9 },
  () => found.tried,
);
