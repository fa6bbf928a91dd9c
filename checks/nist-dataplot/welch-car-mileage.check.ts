import { welch } from '@standstill/numerics';
import { published } from '../published.ts';

/** AUTO83B.DAT: miles per gallon of US and of Japanese cars, from the summaries that the source prints. */
const american = { count: 249, mean: 20.14458, standardDeviation: 6.4147 };
const japanese = { count: 79, mean: 30.48101, standardDeviation: 6.10771 };
const test = welch(american, japanese);

const source = 'nist-dataplot';
const basis = 'R';

published(
  {
    id: '9-01',
    source,
    quantity: "Welch's t, US against Japanese mileage",
    printed: -12.94627,
    unit: '',
    tolerance: 5e-6,
    basis,
  },
  () => test.t,
);
published(
  {
    id: '9-01b',
    source,
    quantity: 'its degrees of freedom',
    printed: 136.87499,
    unit: '',
    tolerance: 2e-5,
    note: 'Tolerance 0.00002, as the case states it.',
    basis,
  },
  () => test.degreesOfFreedom,
);
published(
  { id: '9-01c', source, quantity: 'its two-sided p', printed: 1.571e-25, unit: '', tolerance: 5e-29, basis },
  () => test.p,
);
