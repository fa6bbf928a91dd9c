import { centeredDiscrepancy, sobolSequence } from '@standstill/numerics';
import { published } from '../published.ts';

const common = { source: 'scipy-qmc', unit: '', basis: 'R' } as const;

/** Six points of a grid of six, each in the middle of its cell. */
const spread = [1, 3, 2, 6, 3, 2, 4, 5, 5, 1, 6, 4].map((place) => (place - 0.5) / 6);

published(
  {
    ...common,
    id: 'discrepancy',
    quantity: 'Squared centered discrepancy of six spread points in two dimensions',
    printed: 0.008142039609053464,
    tolerance: 5e-16,
    note: 'printed to all digits of a double; held to 5e-16',
  },
  () => centeredDiscrepancy(spread, 2),
);
published(
  {
    ...common,
    id: 'sobol-2d',
    quantity: 'Squared centered discrepancy of the first 8 Sobol points in two dimensions, unscrambled',
    printed: 0.013882107204860938,
    tolerance: 5e-16,
    note: 'printed to all digits of a double; held to 5e-16',
  },
  () => centeredDiscrepancy(sobolSequence({ draws: 8, keys: ['x', 'y'], seed: 0, scramble: false }), 2),
);
published(
  {
    ...common,
    id: 'sobol-6d',
    quantity: 'Squared centered discrepancy of the first 1024 Sobol points in six dimensions, unscrambled',
    printed: 6.2013e-5,
    tolerance: 5e-10,
    note: 'computed with SciPy 1.17.1',
  },
  () => {
    const keys = ['1', '2', '3', '4', '5', '6'];
    return centeredDiscrepancy(sobolSequence({ draws: 1024, keys, seed: 0, scramble: false }), 6);
  },
);
