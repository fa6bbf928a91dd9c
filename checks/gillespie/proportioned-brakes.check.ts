import {
  adhesionUse,
  axleLoads,
  brakeForce,
  brakeTorque,
  exampleRoad,
  exampleSetUp,
  linePressures,
  pedalForceFor,
  standardGravity,
  type AxleBrake,
  type SetUp,
} from '@standstill/braking';
import { published } from '../published.ts';

const inch = 0.0254;
const pound = 4.448222;
const psi = 6894.757;
const mass = ((2210 + 1864) * pound) / standardGravity;

/** A brake with a torque gain in in-lb/psi: one square inch of piston, no push-out, the friction set to fit. */
function brakeWithGain(gain: number): { readonly brake: AxleBrake; readonly friction: number } {
  const { caliper } = exampleSetUp.frontBrake;
  const brake: AxleBrake = {
    ...exampleSetUp.frontBrake,
    caliper: { ...caliper, pistonDiameters: [0.07], pushOutPressure: 0, efficiency: 1 },
  };
  const torquePerFriction = brakeTorque({ brake, pressure: psi, friction: 1 });
  return { brake, friction: (gain * pound * inch) / torquePerFriction };
}

const front = brakeWithGain(20);
const rear = brakeWithGain(14);
const tire = { ...exampleSetUp.frontTire, rollingRadius: 12.11 * inch };
const setUp: SetUp = {
  ...exampleSetUp,
  car: {
    ...exampleSetUp.car,
    mass,
    wheelbase: 108.5 * inch,
    centerOfGravityHeight: 20.5 * inch,
    frontLoadShare: 2210 / 4074,
  },
  booster: { kind: 'none' },
  rearValve: { kind: 'proportioning', kneePressure: 290 * psi, slope: 0.3 },
};

/** The whole chain: the foot that gives the front pressure, then lines, torques and forces. */
function braking(frontPressure_psi: number) {
  const pedalForce = pedalForceFor({ setUp, frontPressure: frontPressure_psi * psi });
  const pressures = linePressures({ setUp, pedalForce });
  const axleForce = (of: typeof front, pressure: number) =>
    2 * brakeForce({ torque: brakeTorque({ brake: of.brake, pressure, friction: of.friction }), tire });
  const frontForce = axleForce(front, pressures.front);
  const rearForce = axleForce(rear, pressures.rear);
  const use = adhesionUse({ car: setUp.car, frontForce, rearForce });
  const deceleration = use.deceleration * standardGravity;
  const loads = axleLoads({ car: setUp.car, deceleration, speed: 0, road: exampleRoad });
  return { rearPressure: pressures.rear, frontForce, rearForce, use, loads };
}

const source = 'gillespie';
const basis = 'M';
published(
  {
    id: '3-03a',
    source,
    quantity: 'front brake force at 200 psi',
    printed: 661,
    unit: 'lb',
    tolerance: 0.5,
    basis,
  },
  () => braking(200).frontForce / pound,
);
published(
  {
    id: '3-03b',
    source,
    quantity: 'rear brake force at 200 psi',
    printed: 462,
    unit: 'lb',
    tolerance: 0.5,
    basis,
  },
  () => braking(200).rearForce / pound,
);
published(
  {
    id: '3-03c',
    source,
    quantity: 'deceleration at 200 psi',
    printed: 0.276,
    unit: 'g',
    tolerance: 0.0005,
    basis,
  },
  () => braking(200).use.deceleration,
);
published(
  {
    id: '3-04a',
    source,
    quantity: 'rear line pressure at 500 psi, knee 290 psi, slope 0.3',
    printed: 353,
    unit: 'psi',
    tolerance: 0.5,
    basis,
  },
  () => braking(500).rearPressure / psi,
);
published(
  {
    id: '3-04b',
    source,
    quantity: 'front brake force at 500 psi',
    printed: 1652,
    unit: 'lb',
    tolerance: 0.5,
    basis,
  },
  () => braking(500).frontForce / pound,
);
published(
  {
    id: '3-04c',
    source,
    quantity: 'rear brake force at 500 psi',
    printed: 816,
    unit: 'lb',
    tolerance: 0.5,
    basis,
  },
  () => braking(500).rearForce / pound,
);
published(
  {
    id: '3-04d',
    source,
    quantity: 'deceleration at 500 psi',
    printed: 0.606,
    unit: 'g',
    tolerance: 0.0005,
    basis,
  },
  () => braking(500).use.deceleration,
);
published(
  {
    id: '3-04e',
    source,
    quantity: 'front axle load at 500 psi',
    printed: 2676,
    unit: 'lb',
    tolerance: 0.5,
    basis,
  },
  () => braking(500).loads.front / pound,
);
published(
  {
    id: '3-04f',
    source,
    quantity: 'rear axle load at 500 psi',
    printed: 1398,
    unit: 'lb',
    tolerance: 0.5,
    basis,
  },
  () => braking(500).loads.rear / pound,
);
published(
  {
    id: '3-04g',
    source,
    quantity: 'friction used by the front axle at 500 psi',
    printed: 0.617,
    unit: '',
    tolerance: 0.0005,
    basis,
  },
  () => braking(500).use.front,
);
published(
  {
    id: '3-04h',
    source,
    quantity: 'friction used by the rear axle at 500 psi',
    printed: 0.584,
    unit: '',
    tolerance: 0.0005,
    basis,
  },
  () => braking(500).use.rear,
);
