import { boltTorque, proofLoad } from '@standstill/braking';
import { published } from '../published.ts';

const source = 'bolt-torque-article';
const given = 'M12, class 8.8, 70 % of the proof load';
const preload = (): number =>
  0.7 * proofLoad({ thread: { diameter: 0.012, pitch: 0.00175 }, propertyClass: '8.8' });

published(
  {
    id: '6-08a',
    source,
    quantity: `clamp load, ${given}`,
    printed: 34.2,
    unit: 'kN',
    tolerance: 0.05,
    basis: 'R',
  },
  () => preload() / 1e3,
);
published(
  {
    id: '6-08b',
    source,
    quantity: `torque at a nut factor of 0.2, ${given}`,
    printed: 82.1,
    unit: 'N·m',
    tolerance: 0.05,
    basis: 'R',
  },
  () => boltTorque({ preload: preload(), diameter: 0.012, nutFactor: 0.2 }),
);
