import { exampleSetUp, peakFriction } from '@standstill/braking';
import { published } from '../published.ts';

const poundForce = 4.4482216152605;
const source = 'milliken';

/** Exponent through the ends of the table: 1.10 at 900 lb and 0.97 at 1800 lb. */
const tire = {
  ...exampleSetUp.frontTire,
  nominalLoad: 900 * poundForce,
  peakFriction: 1.1,
  loadSensitivity: Math.log2(1.1 / 0.97),
};
const frictionAt = (pounds: number): number =>
  peakFriction({ tire, load: pounds * poundForce, surfaceFactor: 1 });

published(
  {
    id: 'figure 2.9',
    source,
    quantity:
      'greatest (side) force over load at 1350 lb, by our power law through the points at 900 and 1800 lb',
    printed: 1.08,
    unit: '',
    tolerance: 0.005,
    basis: 'R',
    expectedDifference: {
      follows: 1.022,
      reason:
        'The measured tire holds its friction up to 1350 lb and then drops; a power law between the same ends falls evenly and is 5 % low there. That is what our load law is worth between its points.',
    },
  },
  () => frictionAt(1350),
);
