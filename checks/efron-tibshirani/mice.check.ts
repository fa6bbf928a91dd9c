import { summarize, welch } from '@standstill/numerics';
import { published } from '../published.ts';

/** Days that sixteen mice lived, treated and not. */
const treated = [94, 197, 16, 38, 99, 141, 23];
const control = [52, 104, 146, 10, 51, 30, 40, 27, 46];
const difference = welch(summarize(treated), summarize(control));

const shared = {
  source: 'efron-tibshirani',
  unit: 'd',
  basis: 'M',
  note: 'The sixteen values were read in a stored copy of them; the printed figures are from memory.',
} as const;

const errorOfMean = (values: readonly number[]): number =>
  summarize(values).standardDeviation / Math.sqrt(values.length);

published(
  { ...shared, id: 'mean', quantity: 'mice, difference of the means', printed: 30.63, tolerance: 0.005 },
  () => difference.difference,
);
published(
  {
    ...shared,
    id: 'treated',
    quantity: 'standard error of the mean, treated',
    printed: 25.24,
    tolerance: 0.005,
  },
  () => errorOfMean(treated),
);
published(
  {
    ...shared,
    id: 'control',
    quantity: 'standard error of the mean, not treated',
    printed: 14.14,
    tolerance: 0.005,
    expectedDifference: {
      follows: 14.16,
      reason: 'The nine values as stored give 14.16; the book (from memory) prints 14.14.',
    },
  },
  () => errorOfMean(control),
);
published(
  {
    ...shared,
    id: 'error',
    quantity: 'standard error of the difference',
    printed: 28.93,
    tolerance: 0.005,
    expectedDifference: {
      follows: 28.94,
      reason: 'It follows 14.14 for the mice not treated; with 14.16 it is 28.94.',
    },
  },
  () => difference.standardError,
);
