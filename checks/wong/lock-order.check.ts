import { exampleRoad, exampleSetUp, lockOrder, standardGravity, type SetUp } from '@standstill/braking';
import { published } from '../published.ts';

const tire = { ...exampleSetUp.frontTire, peakFriction: 0.8, loadSensitivity: 0 };
const { car, frontBrake } = exampleSetUp;
const caliper = { ...frontBrake.caliper, pushOutPressure: 0 };

/** The same brake at both axles, the rear one with the efficiency that makes the share 60 to 40. */
const setUp: SetUp = {
  ...exampleSetUp,
  car: {
    ...car,
    mass: 21_240 / standardGravity,
    wheelbase: 2.87,
    centerOfGravityHeight: 0.508,
    frontLoadShare: (2.87 - 1.27) / 2.87,
    rollingResistance: 0.02,
  },
  frontTire: tire,
  rearTire: tire,
  rearValve: { kind: 'none' },
  frontBrake: { ...frontBrake, caliper: { ...caliper, efficiency: 0.9 } },
  rearBrake: { ...frontBrake, caliper: { ...caliper, efficiency: 0.6 } },
};

const order = () => lockOrder({ setUp, road: exampleRoad });
const inputs = '21.24 kN, L 2.87 m, l1 1.27 m, h 0.508 m, front share 0.60, fr 0.02, friction 0.8';

published(
  {
    id: '3-07a',
    source: 'wong',
    quantity: `deceleration at which the front axle locks; ${inputs}`,
    printed: 0.999,
    unit: 'g',
    tolerance: 0.0005,
    basis: 'M',
  },
  () => order().front?.deceleration ?? 0,
);
published(
  {
    id: '3-07b',
    source: 'wong',
    quantity: `deceleration at which the first axle locks, the rear one; ${inputs}`,
    printed: 0.668,
    unit: 'g',
    tolerance: 0.0005,
    basis: 'M',
  },
  () => (order().first === 'rear' ? (order().at?.deceleration ?? 0) : 0),
);
