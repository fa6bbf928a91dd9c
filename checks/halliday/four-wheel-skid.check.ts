import {
  exampleRoad,
  exampleSetUp,
  standardGravity,
  tirePeakForce,
  wheelLoads,
  type Car,
} from '@standstill/braking';
import { published } from '../published.ts';

const friction = 0.4;
const car: Car = {
  ...exampleSetUp.car,
  mass: 11_000 / standardGravity,
  wheelbase: 4.2,
  centerOfGravityHeight: 0.75,
  frontLoadShare: (4.2 - 1.8) / 4.2,
};
const deceleration = friction * standardGravity;
const loads = () => wheelLoads({ car, deceleration, speed: 0, road: exampleRoad });
const tire = { ...exampleSetUp.frontTire, peakFriction: friction, loadSensitivity: 0 };
const frictionForce = (load: number) => tirePeakForce({ tire, load, surfaceFactor: 1 });
const note = 'Tolerance 1 %, as the case states it.';
const inputs = '11 kN, L 4.2 m, d 1.8 m, h 0.75 m, friction 0.40';

published(
  {
    id: '3-09a',
    source: 'halliday',
    quantity: `load of each front wheel, all wheels sliding; ${inputs}`,
    printed: 3.54,
    unit: 'kN',
    tolerance: 0.0354,
    basis: 'M',
    note,
  },
  () => loads()[0] / 1000,
);
published(
  {
    id: '3-09b',
    source: 'halliday',
    quantity: `load of each rear wheel, all wheels sliding; ${inputs}`,
    printed: 1.96,
    unit: 'kN',
    tolerance: 0.0196,
    basis: 'M',
    note,
  },
  () => loads()[2] / 1000,
);
published(
  {
    id: '3-09c',
    source: 'halliday',
    quantity: 'friction force of each front wheel',
    printed: 1414,
    unit: 'N',
    tolerance: 14.14,
    basis: 'M',
    note,
  },
  () => frictionForce(loads()[0]),
);
published(
  {
    id: '3-09d',
    source: 'halliday',
    quantity: 'friction force of each rear wheel',
    printed: 0.786,
    unit: 'kN',
    tolerance: 0.00786,
    basis: 'M',
    note,
  },
  () => frictionForce(loads()[2]) / 1000,
);
