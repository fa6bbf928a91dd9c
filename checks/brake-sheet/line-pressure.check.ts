import { exampleSetUp, linePressures, rodForce, type SetUp } from '@standstill/braking';
import { published } from '../published.ts';

const setUp: SetUp = {
  ...exampleSetUp,
  pedal: { ...exampleSetUp.pedal, ratio: 5, efficiency: 1 },
  booster: { kind: 'none' },
  masterCylinder: { kind: 'tandem', bore: 0.02, stroke: 0.035, efficiency: 1 },
};
const source = 'brake-sheet';
const note = 'Tolerance 0.1 %, as the case states it; the sheet prints 948.9 N for 5 × 189.8 N = 949.0 N.';

published(
  {
    id: '5-17a',
    source,
    quantity: 'push-rod force, pedal 189.8 N, ratio 5',
    printed: 948.9,
    unit: 'N',
    tolerance: 0.9489,
    basis: 'R',
    note,
  },
  () => rodForce({ pedal: setUp.pedal, force: 189.8 }),
);
published(
  {
    id: '5-17b',
    source,
    quantity: 'line pressure, bore 20 mm',
    printed: 3.02,
    unit: 'MPa',
    tolerance: 0.00302,
    basis: 'R',
    note,
  },
  () => linePressures({ setUp, pedalForce: 189.8 }).front / 1e6,
);
