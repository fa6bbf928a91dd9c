import { permutationTest } from '@standstill/numerics';
import { published } from '../published.ts';

published(
  {
    id: 'quiz',
    source: 'iowa-randomization',
    quantity: 'scores 7 and 5 against 3 and 1, p both ways',
    printed: 0.333,
    unit: '',
    tolerance: 0.0005,
    basis: 'R',
  },
  () => permutationTest([7, 5], [3, 1], { seed: 1 }).p,
);
