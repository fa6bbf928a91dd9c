import {
  exampleSetUp,
  hoseClasses,
  hoseVolume,
  pedalForceFor,
  pedalTravel,
  travelPerVolume,
  type SetUp,
} from '@standstill/braking';
import { published } from '../published.ts';

const psi = 6894.757;
const source = 'fmvss-106';
const low = hoseClasses.rubberLowExpansionLimit;
const regular = hoseClasses.rubberRegularLimit;

/** cc swallowed by hoses of a class and a length. */
function swallowed(hoseClass: typeof low | typeof regular, length: number, pressure_psi: number): number {
  const hose = { length, pressures: hoseClass.pressures, expansions: hoseClass.expansions.values };
  return hoseVolume(hose, pressure_psi * psi).volume * 1e6;
}

for (const [id, pressure, printed] of [
  ['5-01a', 1000, 1.08],
  ['5-01b', 1500, 1.38],
  ['5-01c', 2900, 2],
] as const) {
  published(
    {
      id,
      source,
      quantity: `low-expansion limit at ${pressure} psi`,
      printed,
      unit: 'cc/m',
      tolerance: 0.005,
      basis: 'R',
      evidence: 'transcription',
    },
    () => swallowed(low, 1, pressure),
  );
}
for (const [id, pressure, printed] of [
  ['5-02a', 1000, 2.17],
  ['5-02b', 1500, 2.59],
  ['5-02c', 2900, 3.35],
] as const) {
  published(
    {
      id,
      source,
      quantity: `regular-hose limit at ${pressure} psi`,
      printed,
      unit: 'cc/m',
      tolerance: 0.005,
      basis: 'M',
      evidence: 'transcription',
    },
    () => swallowed(regular, 1, pressure),
  );
}

/** 15/16 in. */
const cylinder = { kind: 'tandem', bore: 0.0254 * (15 / 16), stroke: 0.035, efficiency: 1 } as const;
const fourHoses = (hoseClass: typeof low | typeof regular) => 4 * swallowed(hoseClass, 0.35, 1500);
const saved = () => fourHoses(regular) - fourHoses(low);
const savedStroke_mm = () => saved() * 1e-6 * travelPerVolume(cylinder).front * 1000;

/** mm at the pedal that four hoses of 0.35 m take at 1500 psi. */
function hoseTravel_mm(hoseClass: typeof low | typeof regular): number {
  const { pressures, expansions } = hoseClass;
  const hose = { length: 0.35, pressures, expansions: expansions.values };
  const setUp: SetUp = {
    ...exampleSetUp,
    pedal: { ...exampleSetUp.pedal, ratio: 5 },
    masterCylinder: cylinder,
    rearValve: { kind: 'none' },
    frontBrake: { ...exampleSetUp.frontBrake, hose },
    rearBrake: { ...exampleSetUp.rearBrake, hose },
  };
  const pedalForce = pedalForceFor({ setUp, frontPressure: 1500 * psi });
  return pedalTravel({ setUp, pedalForce }).parts.hoses * 1000;
}

published(
  {
    id: '5-09a',
    source,
    quantity: 'four regular hoses of 0.35 m at 1500 psi',
    printed: 3.63,
    unit: 'cc',
    tolerance: 0.005,
    basis: 'X',
  },
  () => fourHoses(regular),
);
published(
  {
    id: '5-09b',
    source,
    quantity: 'four low-expansion hoses of 0.35 m at 1500 psi',
    printed: 1.93,
    unit: 'cc',
    tolerance: 0.005,
    basis: 'X',
  },
  () => fourHoses(low),
);
published(
  { id: '5-09c', source, quantity: 'volume saved', printed: 1.7, unit: 'cc', tolerance: 0.005, basis: 'X' },
  saved,
);
published(
  {
    id: '5-09d',
    source,
    quantity: 'stroke saved at a 15/16 in cylinder',
    printed: 3.82,
    unit: 'mm',
    tolerance: 0.005,
    basis: 'X',
  },
  savedStroke_mm,
);
published(
  {
    id: '5-09e',
    source,
    quantity: 'pedal travel saved at ratio 5, through the whole pedal',
    printed: 19.1,
    unit: 'mm',
    tolerance: 0.05,
    basis: 'X',
  },
  () => hoseTravel_mm(regular) - hoseTravel_mm(low),
);
