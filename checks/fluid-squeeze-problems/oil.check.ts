import { compressedFluid } from '@standstill/braking';
import { published } from '../published.ts';

const source = 'fluid-squeeze-problems';

published(
  {
    id: 'press',
    source,
    quantity: 'share that the oil of a press shrinks by, 16 MPa, bulk modulus 5.0 GPa',
    printed: 0.32,
    unit: '%',
    tolerance: 0.005,
    basis: 'R',
    note: 'The exercise has 250 L; ours is computed on 2.5 L, since the share is the same.',
  },
  () => (100 * compressedFluid({ volume: 2.5e-3, bulkModulus: 5e9, pressure: 16e6 })) / 2.5e-3,
);
published(
  {
    id: 'specimen',
    source,
    quantity: 'shrinkage of 600 cm³ of oil under 3.6 MPa, bulk modulus 4.8 GPa',
    printed: 0.45,
    unit: 'cm³',
    tolerance: 0.005,
    basis: 'R',
    note: 'The exercise asks for the modulus from the shrinkage.',
  },
  () => 1e6 * compressedFluid({ volume: 600e-6, bulkModulus: 4.8e9, pressure: 3.6e6 }),
);
