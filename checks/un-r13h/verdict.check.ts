import {
  annexFiveVerdict,
  exampleSetUp,
  mostAdhesionAllowed,
  type AxleBrake,
  type SetUp,
} from '@standstill/braking';
import { published } from '../published.ts';

/** The car of case 1-35: fixed split 70 to 30, whose rear axle uses more friction from where the curves cross. */
const { frontBrake, frontTire } = exampleSetUp;
const brakeWith = (efficiency: number): AxleBrake => ({
  ...frontBrake,
  caliper: { ...frontBrake.caliper, pushOutPressure: 0, efficiency },
});
const setUp: SetUp = {
  ...exampleSetUp,
  car: {
    ...exampleSetUp.car,
    mass: 1300,
    wheelbase: 2.6,
    centerOfGravityHeight: 0.5,
    frontLoadShare: 800 / 1300,
  },
  frontTire,
  rearTire: frontTire,
  rearValve: { kind: 'none' },
  frontBrake: brakeWith(0.7),
  rearBrake: brakeWith(0.3),
};

published(
  {
    id: '1-35c',
    source: 'un-r13h',
    quantity:
      'first step of 0.005 g at which the rear axle of case 1-35 uses more friction than the front: the curves cross where 0.7 = 800/1300 + z h/E, by hand at 0.440',
    printed: 0.44,
    unit: 'g',
    tolerance: 0.005,
    basis: 'X',
    note: 'Tolerance: the step of the search.',
  },
  () => annexFiveVerdict({ setUp }).rearAboveFrontAt?.deceleration ?? 0,
);
published(
  {
    id: '1-37d',
    source: 'un-r13h',
    quantity: 'most friction that an axle may use at 0.31 g',
    printed: 0.5,
    unit: '',
    tolerance: 0.05,
    basis: 'M',
  },
  () => mostAdhesionAllowed(0.31),
);
