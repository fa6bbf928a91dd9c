import { pooledT } from '@standstill/numerics';
import { published } from '../published.ts';

const first = { count: 10, mean: 9.63, standardDeviation: 1.2 };
const second = { count: 15, mean: 10.78, standardDeviation: 0.94 };
const test = pooledT(first, second);

const shared = { source: 'rsscse-two-sample-t', unit: '', basis: 'R' } as const;

published(
  { ...shared, id: '9-07', quantity: 'pooled t from summaries', printed: -2.68, tolerance: 0.005 },
  () => test.t,
);
published(
  { ...shared, id: '9-07b', quantity: 'its degrees of freedom', printed: 23, tolerance: 1e-12 },
  () => test.degreesOfFreedom,
);
published(
  { ...shared, id: '9-07c', quantity: 'its two-sided p', printed: 0.013, tolerance: 0.0005 },
  () => test.p,
);
published(
  { ...shared, id: '9-07d', quantity: '95 % interval, low end', printed: -2.036, tolerance: 0.0005 },
  () => test.low,
);
published(
  { ...shared, id: '9-07e', quantity: '95 % interval, high end', printed: -0.264, tolerance: 0.0005 },
  () => test.high,
);
published(
  { ...shared, id: '9-07f', quantity: 'pooled standard deviation', printed: 1.0494, tolerance: 0.00005 },
  () => test.standardError / Math.sqrt(1 / first.count + 1 / second.count),
);
