import {
  adhesionUse,
  axleLoads,
  brakeForce,
  brakeTorque,
  exampleRoad,
  exampleSetUp,
  installedLine,
  installedPoint,
  linePressures,
  pedalForceFor,
  standardGravity,
  usualPadTemperatures,
  type AxleBrake,
  type SetUp,
} from '@standstill/braking';
import { published } from '../published.ts';

const inch = 0.0254;
const pound = 4.448222;
const psi = 6894.757;
const mass = ((2210 + 1864) * pound) / standardGravity;

/**
 * The book gives each brake by its gain, torque of one wheel over line pressure, in in-lb/psi: that is in cubic inches.
 * Here the gain comes from parts worked out by hand, with two pads on every rotor: gain = 2 faces × friction × piston
 * area of one side × effective radius. Friction 0.40 and radius 5 in for both axles; front 2 × 0.40 × 5.0 in² × 5 in =
 * 20 in-lb/psi, rear 2 × 0.40 × 3.5 in² × 5 in = 14 in-lb/psi. One round piston of 5.0 in² is 2.52313 in across, one
 * of 3.5 in² is 2.11100 in. Nothing here asks our own code for a torque.
 */
const frontPiston = 2.52313 * inch;
const rearPiston = 2.111 * inch;

/** Pads of 1.8 in on a swept band from 4.1 to 5.9 in: 5.0 in in the middle, where uniform wear has its radius. */
function brakeWith(pistonDiameter: number): AxleBrake {
  const { frontBrake } = exampleSetUp;
  return {
    ...frontBrake,
    caliper: {
      ...frontBrake.caliper,
      pistonDiameters: [pistonDiameter],
      pushOutPressure: 0,
      efficiency: 1,
    },
    pad: { ...frontBrake.pad, radialHeight: 1.8 * inch, frictionTemperatures: [20], frictions: [0.4] },
    rotor: { ...frontBrake.rotor, outerDiameter: 12 * inch, sweptOuterRadius: 5.9 * inch },
    pressureAssumption: 'uniform-wear',
  };
}

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
  frontTire: tire,
  rearTire: tire,
  booster: { kind: 'none' },
  rearValve: { kind: 'proportioning', kneePressure: 290 * psi, slope: 0.3 },
  frontBrake: brakeWith(frontPiston),
  rearBrake: brakeWith(rearPiston),
};
const line = installedLine(setUp, usualPadTemperatures);

/** N of both wheels. */
function axleForce(brake: AxleBrake, pressure: number): number {
  return 2 * brakeForce({ torque: brakeTorque({ brake, pressure, friction: 0.4 }), tire });
}

/** The whole chain: the foot that gives the front pressure, then lines, torques, forces and the balance as fitted. */
function braking(frontPressure_psi: number) {
  const pedalForce = pedalForceFor({ setUp, frontPressure: frontPressure_psi * psi });
  const pressures = linePressures({ setUp, pedalForce });
  const frontForce = axleForce(setUp.frontBrake, pressures.front);
  const rearForce = axleForce(setUp.rearBrake, pressures.rear);
  const { deceleration } = adhesionUse({ car: setUp.car, frontForce, rearForce });
  const loads = axleLoads({
    car: setUp.car,
    deceleration: deceleration * standardGravity,
    speed: 0,
    road: exampleRoad,
  });
  const installed = installedPoint(setUp, line, deceleration);
  return { rearPressure: pressures.rear, frontForce, rearForce, deceleration, loads, installed };
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
  () => braking(200).deceleration,
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
  () => braking(500).deceleration,
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
    quantity: 'friction used by the front axle at 500 psi, on the balance as fitted',
    printed: 0.617,
    unit: '',
    tolerance: 0.0005,
    basis,
  },
  () => braking(500).installed?.frontAdhesion ?? 0,
);
published(
  {
    id: '3-04h',
    source,
    quantity: 'friction used by the rear axle at 500 psi, on the balance as fitted',
    printed: 0.584,
    unit: '',
    tolerance: 0.0005,
    basis,
  },
  () => braking(500).installed?.rearAdhesion ?? 0,
);
