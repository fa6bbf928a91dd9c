import { pairedT, summarize, welch } from '@standstill/numerics';
import { published } from '../published.ts';

/** Extra hours of sleep of the same ten people under two drugs, as in the R dataset sleep; the ten pairs are written from memory. */
const first = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2];
const second = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];
const paired = pairedT(first, second);
const apart = welch(summarize(first), summarize(second));

const shared = {
  source: 'student-1908',
  basis: 'R',
  unit: '',
  note: 'The ten pairs are written from memory.',
} as const;

published(
  { ...shared, id: '9-10', quantity: 'paired t', printed: -4.0621, tolerance: 0.00005 },
  () => paired.t,
);
published(
  { ...shared, id: '9-10b', quantity: 'its degrees of freedom', printed: 9, tolerance: 1e-12 },
  () => paired.degreesOfFreedom,
);
published(
  { ...shared, id: '9-10c', quantity: 'its two-sided p', printed: 0.002833, tolerance: 5e-7 },
  () => paired.p,
);
published(
  {
    ...shared,
    id: '9-10d',
    quantity: '95 % interval, low end',
    printed: -2.46,
    unit: 'h',
    tolerance: 0.0005,
  },
  () => paired.low,
);
published(
  {
    ...shared,
    id: '9-10e',
    quantity: '95 % interval, high end',
    printed: -0.7,
    unit: 'h',
    tolerance: 0.0005,
  },
  () => paired.high,
);
published(
  {
    ...shared,
    id: '9-10f',
    quantity: "the same taken apart: Welch's t",
    printed: -1.8608,
    tolerance: 0.00005,
  },
  () => apart.t,
);
published(
  { ...shared, id: '9-10g', quantity: 'its degrees of freedom', printed: 17.776, tolerance: 0.0005 },
  () => apart.degreesOfFreedom,
);
published(
  { ...shared, id: '9-10h', quantity: 'its two-sided p', printed: 0.07939, tolerance: 5e-6 },
  () => apart.p,
);
