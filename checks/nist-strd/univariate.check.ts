import { mean, standardDeviation } from '@standstill/numerics';
import { published } from '../published.ts';

/** Michelson's 100 readings of the speed of light in air, km/s less 299,000, as in the R dataset morley (written from memory; mean and deviation below hold it to the source). */
const readings = [
  850, 740, 900, 1070, 930, 850, 950, 980, 980, 880, 1000, 980, 930, 650, 760, 810, 1000, 1000, 960, 960, 960,
  940, 960, 940, 880, 800, 850, 880, 900, 840, 830, 790, 810, 880, 880, 830, 800, 790, 760, 800, 880, 880,
  880, 860, 720, 720, 620, 860, 970, 950, 880, 910, 850, 870, 840, 840, 850, 840, 840, 840, 890, 810, 810,
  820, 800, 770, 760, 740, 750, 760, 910, 920, 890, 860, 880, 720, 840, 850, 850, 780, 890, 840, 780, 810,
  760, 810, 790, 810, 820, 850, 870, 870, 810, 740, 810, 940, 950, 800, 810, 870,
];
/** First the middle, then 500 times low and high: the stress sets as their public description makes them. */
function stressSet(middle: number, low: number, high: number): number[] {
  return [middle, ...Array.from({ length: 500 }, () => [low, high]).flat()];
}

const source = 'nist-strd';
const basis = 'R';

published(
  {
    id: '9-04',
    source,
    quantity: 'Michelson, certified mean',
    printed: 299.8524,
    unit: '10³ km/s',
    tolerance: 5e-14,
    basis,
  },
  () => (299_000 + mean(readings)) / 1000,
);
published(
  {
    id: '9-04b',
    source,
    quantity: 'Michelson, certified standard deviation',
    printed: 0.0790105478190518,
    unit: '10³ km/s',
    tolerance: 5e-17,
    basis,
  },
  () => standardDeviation(readings) / 1000,
);
published(
  {
    id: '9-04c',
    source,
    quantity: 'the same readings less 299,000, mean',
    printed: 852.4,
    unit: 'km/s',
    tolerance: 1e-12,
    basis,
  },
  () => mean(readings),
);
published(
  {
    id: '9-04d',
    source,
    quantity: 'the same readings less 299,000, standard deviation',
    printed: 79.01054782,
    unit: 'km/s',
    tolerance: 5e-9,
    basis,
  },
  () => standardDeviation(readings),
);

published(
  {
    id: '9-06',
    source,
    quantity: 'NumAcc1, three values near 1e7, standard deviation',
    printed: 1,
    unit: '',
    tolerance: 1e-15,
    basis,
  },
  () => standardDeviation([10_000_001, 10_000_003, 10_000_002]),
);
published(
  { id: '9-06b', source, quantity: 'NumAcc1, mean', printed: 10_000_002, unit: '', tolerance: 1e-9, basis },
  () => mean([10_000_001, 10_000_003, 10_000_002]),
);
const nearTenMillion = stressSet(10_000_000.2, 10_000_000.1, 10_000_000.3);
published(
  {
    id: '9-06c',
    source,
    quantity: 'NumAcc4, 1001 values near 1e7, mean',
    printed: 10_000_000.2,
    unit: '',
    tolerance: 1e-8,
    basis,
  },
  () => mean(nearTenMillion),
);
published(
  {
    id: '9-06d',
    source,
    quantity: 'NumAcc4, standard deviation',
    printed: 0.1,
    unit: '',
    tolerance: 1e-9,
    basis,
    note: 'Tolerance 1e-8 of the value, as the case states it: 10000000.1 as a double is itself off by 4e-10.',
  },
  () => standardDeviation(nearTenMillion),
);
