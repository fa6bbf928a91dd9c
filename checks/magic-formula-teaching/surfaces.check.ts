import { magicFormula, type SlipCurve } from '@standstill/braking';
import { published } from '../published.ts';

function surface(stiffnessFactor: number, shapeFactor: number, peakFactor: number, curvatureFactor: number) {
  return { stiffnessFactor, shapeFactor, peakFactor, curvatureFactor };
}

/** Slip of the greatest friction on a fine grid. */
function peakSlip(curve: SlipCurve): number {
  let best = 0;
  for (let slip = 0; slip <= 1; slip += 1e-5) {
    if (magicFormula(curve, slip) > magicFormula(curve, best)) best = slip;
  }
  return best;
}

const source = 'magic-formula-teaching';
const basis = 'M';
const dry = surface(10, 1.9, 1, 0.97);
const snow = surface(5, 2, 0.3, 1);
const ice = surface(4, 2, 0.1, 1);

published(
  {
    id: '8-11a',
    source,
    quantity: 'dry, friction at slip 0.05',
    printed: 0.7356,
    unit: '',
    tolerance: 0.00005,
    basis,
  },
  () => magicFormula(dry, 0.05),
);
for (const [id, name, curve, slip, peak, locked, digits] of [
  ['8-11', 'dry', dry, 0.18, 1, 0.9145, 0.00005],
  ['8-13', 'snow', snow, 0.311, 0.3, 0.286, 0.0005],
  ['8-13', 'ice', ice, 0.389, 0.1, 0.096, 0.0005],
] as const) {
  published(
    {
      id: `${id} ${name} b`,
      source,
      quantity: `${name}, slip at the peak`,
      printed: slip,
      unit: '',
      tolerance: 0.0005,
      basis,
    },
    () => peakSlip(curve),
  );
  published(
    {
      id: `${id} ${name} c`,
      source,
      quantity: `${name}, peak friction`,
      printed: peak,
      unit: '',
      tolerance: 0.0005,
      basis,
    },
    () => magicFormula(curve, peakSlip(curve)),
  );
  published(
    {
      id: `${id} ${name} d`,
      source,
      quantity: `${name}, friction of the locked wheel`,
      printed: locked,
      unit: '',
      tolerance: digits,
      basis,
    },
    () => magicFormula(curve, 1),
  );
}
