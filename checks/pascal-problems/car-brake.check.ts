import { exampleSetUp, linePressures, pistonArea, type SetUp } from '@standstill/braking';
import { published } from '../published.ts';

const source = 'pascal-problems';
const diameterOf = (area: number): number => Math.sqrt((4 * area) / Math.PI);

/** A foot right on the cylinder: no lever, no booster, no losses. */
function pressureOf(bore: number, force: number): number {
  const setUp: SetUp = {
    ...exampleSetUp,
    pedal: { ...exampleSetUp.pedal, ratio: 1, efficiency: 1 },
    booster: { kind: 'none' },
    masterCylinder: { kind: 'tandem', bore, stroke: 0.035, efficiency: 1 },
  };
  return linePressures({ setUp, pedalForce: force }).front;
}

published(
  {
    id: 'algebra a',
    source,
    quantity: 'line pressure, 500 N on a master piston of 5 cm²',
    printed: 1_000_000,
    unit: 'Pa',
    tolerance: 0.5,
    basis: 'R',
  },
  () => pressureOf(diameterOf(5e-4), 500),
);
published(
  {
    id: 'algebra b',
    source,
    quantity: 'force of a slave piston of 50 cm², 500 N on a master piston of 5 cm²',
    printed: 5000,
    unit: 'N',
    tolerance: 0.5,
    basis: 'R',
  },
  () => {
    const caliper = { ...exampleSetUp.frontBrake.caliper, pistonDiameters: [diameterOf(50e-4)] };
    return pressureOf(diameterOf(5e-4), 500) * pistonArea(caliper);
  },
);
published(
  {
    id: 'college physics',
    source,
    quantity: 'line pressure, 500 N on a master cylinder of 0.500 cm',
    printed: 2.5e7,
    unit: 'Pa',
    tolerance: 0.05e7,
    basis: 'R',
  },
  () => pressureOf(0.005, 500),
);
