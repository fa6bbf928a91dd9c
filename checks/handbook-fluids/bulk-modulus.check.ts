import { bulkModulusAt, fluidClasses } from '@standstill/braking';
import { publishedBand } from '../published.ts';

for (const [id, temperature] of [
  ['5-14a', 20],
  ['5-14b', 60],
  ['5-14c', 100],
] as const)
  publishedBand(
    {
      id,
      source: 'handbook-fluids',
      quantity: `bulk modulus of glycol fluid at ${temperature} °C`,
      unit: 'GPa',
      basis: 'M',
      low: 1.3,
      high: 2.2,
      note: 'The fall with temperature was chosen inside this band: the rows show that it stays there.',
    },
    () => bulkModulusAt({ bulkModulus: fluidClasses.dot4.bulkModulus.value, temperature }) / 1e9,
  );
