import { magicFormula, type SlipCurve } from '@standstill/braking';
import { published } from '../published.ts';

/** The source's parameters at a load of 4 kN; its slip S is in percent. */
const load_kN = 4;
const shapeFactor = 1.65;
const peakFactor = 1688 * load_kN;
const curve: SlipCurve = {
  shapeFactor,
  peakFactor,
  stiffnessFactor: (229 * load_kN) / (shapeFactor * peakFactor),
  curvatureFactor: -10,
};
const force = (slip: number) => magicFormula(curve, 100 * slip);

/** Slip of the greatest force on a fine grid. */
function peakSlip(): number {
  let best = 0;
  for (let slip = 0; slip <= 1; slip += 1e-5) if (force(slip) > force(best)) best = slip;
  return best;
}

const source = 'genta-parameters';
const inputs = 'b0 1.65, b2 1688, b4 229, b8 −10, 4 kN';
published(
  {
    id: '8-08',
    source,
    quantity: `stiffness factor B from the slope at zero slip; ${inputs}`,
    printed: 0.0822203,
    unit: '1/%',
    tolerance: 5e-8,
    basis: 'R',
  },
  () => (magicFormula(curve, 1e-5) - magicFormula(curve, -1e-5)) / 2e-5 / (shapeFactor * peakFactor),
);
for (const [id, slip, printed] of [
  ['8-09a', 0.05, 5363],
  ['8-09b', 0.1, 6437],
  ['8-09c', 0.5, 3821],
] as const) {
  published(
    {
      id,
      source,
      quantity: `force at slip ${slip}; ${inputs}`,
      printed,
      unit: 'N',
      tolerance: 0.5,
      basis: 'X',
    },
    () => force(slip),
  );
}
published(
  {
    id: '8-09d',
    source,
    quantity: `greatest force; ${inputs}`,
    printed: 6752,
    unit: 'N',
    tolerance: 0.5,
    basis: 'X',
  },
  () => force(peakSlip()),
);
published(
  {
    id: '8-09e',
    source,
    quantity: `slip of the greatest force; ${inputs}`,
    printed: 0.0796,
    unit: '',
    tolerance: 0.00005,
    basis: 'X',
  },
  peakSlip,
);
