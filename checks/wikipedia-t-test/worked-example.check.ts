import { pooledT, summarize, welch } from '@standstill/numerics';
import { published } from '../published.ts';

const first = summarize([30.02, 29.99, 30.11, 29.97, 30.01, 29.99]);
const second = summarize([29.89, 29.93, 29.72, 29.98, 30.02, 29.98]);
const unequal = welch(first, second);
const equal = pooledT(first, second);

const shared = { source: 'wikipedia-t-test', unit: '', basis: 'M' } as const;

published(
  { ...shared, id: '9-09', quantity: "Welch's t of six against six", printed: 1.959, tolerance: 0.0005 },
  () => unequal.t,
);
published(
  { ...shared, id: '9-09b', quantity: 'its degrees of freedom', printed: 7.031, tolerance: 0.0005 },
  () => unequal.degreesOfFreedom,
);
published(
  { ...shared, id: '9-09c', quantity: 'its two-sided p', printed: 0.0908, tolerance: 0.00005 },
  () => unequal.p,
);
published(
  { ...shared, id: '9-09d', quantity: '95 % interval, low end', printed: -0.0196, tolerance: 0.00005 },
  () => unequal.low,
);
published(
  { ...shared, id: '9-09e', quantity: '95 % interval, high end', printed: 0.2096, tolerance: 0.00005 },
  () => unequal.high,
);
published(
  { ...shared, id: '9-09f', quantity: 'pooled two-sided p', printed: 0.0786, tolerance: 0.00005 },
  () => equal.p,
);
published(
  { ...shared, id: '9-09g', quantity: 'pooled degrees of freedom', printed: 10, tolerance: 1e-12 },
  () => equal.degreesOfFreedom,
);
