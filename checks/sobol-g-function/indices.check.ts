import { sobolIndices } from '@standstill/numerics';
import { published } from '../published.ts';

const a = [0, 1, 4.5, 9, 99, 99, 99, 99];

/** Π (|4 x − 2| + a) / (1 + a), each x uniform in 0 to 1. */
const [output] = sobolIndices({
  inputs: a.map((_, index) => `x${index + 1}`),
  evaluate: (values, results) => {
    let product = 1;
    values.forEach((x, index) => {
      const each = a[index] ?? NaN;
      product *= (Math.abs(4 * x - 2) + each) / (1 + each);
    });
    results[0] = product;
  },
  outputs: 1,
  draws: 2 ** 16,
  seed: 1,
  redraws: 2,
});
const note = 'V_i = 1 / (3 (1 + a_i)²), V = Π (1 + V_i) − 1; ours from 65,536 rows';
const common = { source: 'sobol-g-function', unit: '', basis: 'M', note } as const;

published(
  {
    ...common,
    id: 'S1',
    quantity: 'g-function, first-order index at a = 0',
    printed: 0.716,
    tolerance: 0.0005,
  },
  () => output?.indices[0]?.first ?? NaN,
);
published(
  {
    ...common,
    id: 'S2',
    quantity: 'g-function, first-order index at a = 1',
    printed: 0.179,
    tolerance: 0.0005,
  },
  () => output?.indices[1]?.first ?? NaN,
);
published(
  {
    ...common,
    id: 'S3',
    quantity: 'g-function, first-order index at a = 4.5',
    printed: 0.0237,
    tolerance: 0.00005,
  },
  () => output?.indices[2]?.first ?? NaN,
);
published(
  { ...common, id: 'ST1', quantity: 'g-function, total index at a = 0', printed: 0.787, tolerance: 0.0005 },
  () => output?.indices[0]?.total ?? NaN,
);
published(
  { ...common, id: 'ST2', quantity: 'g-function, total index at a = 1', printed: 0.242, tolerance: 0.0005 },
  () => output?.indices[1]?.total ?? NaN,
);
