import { sobolIndices } from '@standstill/numerics';
import { published } from '../published.ts';

/** sin x1 + 7 sin² x2 + 0.1 x3⁴ sin x1, each x uniform in −π to π. */
const [output] = sobolIndices({
  inputs: ['x1', 'x2', 'x3'],
  toValue: (share) => Math.PI * (2 * share - 1),
  evaluate: ([x1 = NaN, x2 = NaN, x3 = NaN], results) => {
    results[0] = Math.sin(x1) + 7 * Math.sin(x2) ** 2 + 0.1 * x3 ** 4 * Math.sin(x1);
  },
  outputs: 1,
  draws: 2 ** 18,
  seed: 1,
  redraws: 2,
});
const note = 'worked out from the printed formula; ours from 262,144 rows';
const common = { source: 'ishigami', unit: '', basis: 'R', note } as const;

published(
  {
    ...common,
    id: 'V',
    quantity: 'Variance of the Ishigami function, 1/2 + a²/8 + b²π⁸/18 + bπ⁴/5, a 7, b 0.1',
    printed: 13.845,
    tolerance: 0.0005,
  },
  () => output?.variance ?? NaN,
);
published(
  {
    ...common,
    id: 'S1',
    quantity: 'First-order index of x1, (1 + bπ⁴/5)²/2 over V',
    printed: 0.3139,
    tolerance: 0.00005,
  },
  () => output?.indices[0]?.first ?? NaN,
);
published(
  {
    ...common,
    id: 'S2',
    quantity: 'First-order index of x2, a²/8 over V',
    printed: 0.4424,
    tolerance: 0.00005,
  },
  () => output?.indices[1]?.first ?? NaN,
);
published(
  { ...common, id: 'ST1', quantity: 'Total index of x1', printed: 0.5576, tolerance: 0.00005 },
  () => output?.indices[0]?.total ?? NaN,
);
published(
  {
    ...common,
    id: 'ST3',
    quantity: 'Total index of x3, 8 b²π⁸/225 over V',
    printed: 0.2437,
    tolerance: 0.00005,
  },
  () => output?.indices[2]?.total ?? NaN,
);
