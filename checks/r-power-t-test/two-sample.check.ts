import { noncentralTCdf, runsNeeded, tQuantile, tTestPower } from '@standstill/numerics';
import { published } from '../published.ts';

const goal = { difference: 1, standardDeviation: 1 };

const shared = { source: 'r-power-t-test', unit: '', basis: 'X' } as const;

published(
  {
    ...shared,
    id: '9-12',
    quantity: 'power of 20 against 20 at a difference of 1 sd',
    printed: 0.869,
    tolerance: 0.00005,
  },
  () => tTestPower(goal, 20),
);
published(
  {
    ...shared,
    id: '9-12b',
    quantity: 'the same to seven digits, upper tail alone',
    printed: 0.8689528,
    tolerance: 5e-8,
    note: 'The source leaves out the far tail (2.3e-7) unless asked for it; our power counts both.',
  },
  () => 1 - noncentralTCdf(tQuantile(0.975, 38), 38, Math.sqrt(10)),
);
published(
  {
    ...shared,
    id: '9-13',
    quantity: 'values a group for a power of 0.90, two-sided',
    printed: 22.02,
    tolerance: 0.005,
  },
  () => runsNeeded(goal, 0.9).exact,
);
published(
  { ...shared, id: '9-13b', quantity: 'whole values a group, two-sided', printed: 23, tolerance: 1e-9 },
  () => runsNeeded(goal, 0.9).runs,
);
published(
  {
    ...shared,
    id: '9-13c',
    quantity: 'values a group for a power of 0.90, one-sided',
    printed: 17.85,
    tolerance: 0.005,
  },
  () => runsNeeded({ ...goal, sides: 'one' }, 0.9).exact,
);
published(
  { ...shared, id: '9-13d', quantity: 'whole values a group, one-sided', printed: 18, tolerance: 1e-9 },
  () => runsNeeded({ ...goal, sides: 'one' }, 0.9).runs,
);
