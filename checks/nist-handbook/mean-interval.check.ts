import { meanInterval } from '@standstill/numerics';
import { published } from '../published.ts';

/** ZARR13.DAT, 195 values, from the summary that the source prints. */
const interval = meanInterval({ count: 195, mean: 9.261461, standardDeviation: 0.0227888 });

const shared = {
  source: 'nist-handbook',
  unit: '',
  tolerance: 1e-6,
  basis: 'R',
  note: 'Tolerance 0.000001, as the case states it.',
} as const;

published(
  { ...shared, id: '9-03', quantity: '95 % interval of a mean, low end', printed: 9.258242 },
  () => interval.low,
);
published(
  { ...shared, id: '9-03b', quantity: '95 % interval of a mean, high end', printed: 9.264679 },
  () => interval.high,
);
