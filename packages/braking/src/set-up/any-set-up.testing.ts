import fc from 'fast-check';
import type { AxleBrake } from './axle-brake.ts';
import type { Booster } from './booster.ts';
import type { Car } from './car.ts';
import { exampleSetUp } from './example-set-up.ts';
import type { Fluid } from './fluid.ts';
import type { Hose } from './hose.ts';
import type { MasterCylinder } from './master-cylinder.ts';
import type { Pedal } from './pedal.ts';
import type { RearValve } from './rear-valve.ts';
import type { Road } from './road.ts';
import type { SetUp } from './set-up.ts';
import type { Tire } from './tire.ts';

function between(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
}

export const anyCar: fc.Arbitrary<Car> = fc.record({
  mass: between(500, 3500),
  wheelbase: between(1.8, 3.5),
  centerOfGravityHeight: between(0.25, 0.9),
  frontLoadShare: between(0.35, 0.7),
  leftLoadShare: between(0.44, 0.56),
  dragArea: between(0.2, 1.5),
  frontLiftArea: between(-1, 0.4),
  rearLiftArea: between(-1, 0.4),
  rollingResistance: between(0, 0.03),
  frontWheelInertia: between(0.4, 3),
  rearWheelInertia: between(0.4, 3),
  frontTrack: between(1.2, 1.8),
  rearTrack: between(1.2, 1.8),
  pitchFrequency: between(0.9, 3),
  pitchDamping: between(0.15, 0.8),
  drivelineInertia: fc.oneof(fc.constant(0), between(0, 8)),
  engineDrag: fc.oneof(fc.constant(0), between(0, 150)),
  frontDriveShare: fc.constantFrom(0, 0.5, 1),
});

export const anyTire: fc.Arbitrary<Tire> = fc.record({
  peakFriction: between(0.6, 1.6),
  nominalLoad: between(2000, 6000),
  loadSensitivity: between(0, 0.25),
  slideRatio: between(0.6, 0.9),
  peakSlip: between(0.06, 0.2),
  slipStiffness: between(18, 40),
  relaxationLength: between(0.08, 0.5),
  treadDepth: between(0.0016, 0.008),
  rollingRadius: between(0.25, 0.42),
});

export const anyPedal: fc.Arbitrary<Pedal> = fc.record({
  ratio: between(2.5, 8),
  efficiency: between(0.7, 1),
  freePlay: between(0, 0.02),
  flex: between(0, 2e-5),
  availableTravel: between(0.06, 0.2),
});

export const anyBooster: fc.Arbitrary<Booster> = fc.oneof(
  fc.constant<Booster>({ kind: 'none' }),
  fc.record({
    kind: fc.constant('vacuum' as const),
    gain: between(1, 9),
    jumpInForce: between(0, 500),
    diaphragmArea: between(0.01, 0.12),
    vacuum: between(0, 90_000),
    efficiency: between(0.7, 1),
  }),
  fc.record({
    kind: fc.constant('hydraulic' as const),
    gain: between(1, 9),
    greatestAssist: between(0, 8000),
  }),
);

export const anyMasterCylinder: fc.Arbitrary<MasterCylinder> = fc.oneof(
  fc.record({
    kind: fc.constant('tandem' as const),
    bore: between(0.018, 0.03),
    stroke: between(0.02, 0.05),
    efficiency: between(0.8, 1),
  }),
  fc.record({
    kind: fc.constant('balance-bar' as const),
    frontBore: between(0.018, 0.03),
    rearBore: between(0.018, 0.03),
    frontForceShare: between(0.3, 0.7),
    stroke: between(0.02, 0.05),
    efficiency: between(0.8, 1),
  }),
);

export const anyRearValve: fc.Arbitrary<RearValve> = fc.oneof(
  fc.constant<RearValve>({ kind: 'none' }),
  fc.record({
    kind: fc.constant('proportioning' as const),
    kneePressure: between(0, 6e6),
    slope: between(0, 1),
  }),
);

export const anyHose: fc.Arbitrary<Hose> = fc
  .record({
    length: between(0, 1.2),
    steps: fc.array(fc.tuple(between(1e5, 8e6), between(0, 1e-6)), { minLength: 1, maxLength: 4 }),
  })
  .map(({ length, steps }) => ({
    length,
    pressures: runningSums(steps.map(([pressure]) => pressure)),
    expansions: runningSums(steps.map(([, expansion]) => expansion)),
  }));

function runningSums(steps: readonly number[]): readonly number[] {
  let sum = 0;
  return steps.map((step) => (sum += step));
}

export const anyAxleBrake: fc.Arbitrary<AxleBrake> = fc
  .record({
    kind: fc.constantFrom<AxleBrake['caliper']['kind']>('floating', 'fixed'),
    pistonDiameters: fc.array(between(0.025, 0.05), { minLength: 1, maxLength: 3 }),
    pushOutPressure: fc.oneof(fc.constant(0), between(1e3, 2e5)),
    efficiency: between(0.85, 1),
    volumeCompliance: between(0, 3e-13),
    compressibility: between(0, 4e-11),
    friction: between(0.2, 0.6),
    sweptOuterRadius: between(0.1, 0.2),
    radialHeight: between(0.03, 0.06),
    hose: anyHose,
    tubeLength: between(0, 5),
    runningClearance: between(0, 0.0005),
    pressureAssumption: fc.constantFrom<AxleBrake['pressureAssumption']>('uniform-pressure', 'uniform-wear'),
  })
  .map((parts) => axleBrakeOf(parts));

interface BrakeParts {
  readonly kind: AxleBrake['caliper']['kind'];
  readonly pistonDiameters: readonly number[];
  readonly pushOutPressure: number;
  readonly efficiency: number;
  readonly volumeCompliance: number;
  readonly compressibility: number;
  readonly friction: number;
  readonly sweptOuterRadius: number;
  readonly radialHeight: number;
  readonly hose: Hose;
  readonly tubeLength: number;
  readonly runningClearance: number;
  readonly pressureAssumption: AxleBrake['pressureAssumption'];
}

function axleBrakeOf(parts: BrakeParts): AxleBrake {
  const { frontBrake } = exampleSetUp;
  const { kind, pistonDiameters, pushOutPressure, efficiency, volumeCompliance } = parts;
  const { compressibility, radialHeight, friction, sweptOuterRadius } = parts;
  return {
    kind: 'disc',
    caliper: { kind, pistonDiameters, pushOutPressure, efficiency, volumeCompliance, mass: 4 },
    pad: {
      ...frontBrake.pad,
      compressibility,
      radialHeight,
      frictionTemperatures: [20, 400],
      frictions: [friction, 0.9 * friction],
    },
    rotor: { ...frontBrake.rotor, outerDiameter: 2 * sweptOuterRadius, sweptOuterRadius },
    hose: parts.hose,
    tube: { ...frontBrake.tube, length: parts.tubeLength },
    runningClearance: parts.runningClearance,
    pressureAssumption: parts.pressureAssumption,
  };
}

export const anyFluid: fc.Arbitrary<Fluid> = fc.record({
  bulkModulus: between(1e9, 2.5e9),
  volume: between(5e-5, 4e-4),
  trappedAir: between(0, 1e-5),
  dryBoilingPoint: between(205, 330),
  wetBoilingPoint: between(140, 200),
  age: between(0, 1.5e8),
  waterPerYear: between(0, 0.03),
});

/** Set-ups over a wide range, most of them odd and none of them impossible. */
export const anySetUp: fc.Arbitrary<SetUp> = fc.record({
  car: anyCar,
  frontTire: anyTire,
  rearTire: anyTire,
  pedal: anyPedal,
  booster: anyBooster,
  masterCylinder: anyMasterCylinder,
  circuitSplit: fc.constantFrom<SetUp['circuitSplit']>('front-rear', 'diagonal'),
  rearValve: anyRearValve,
  antilock: fc.constant({ kind: 'none' as const, electronicRearLimit: false }),
  fluid: anyFluid,
  frontBrake: anyAxleBrake,
  rearBrake: anyAxleBrake,
});

export const anyRoad: fc.Arbitrary<Road> = fc.record({
  surfaceFactor: between(0.1, 1.2),
  waterDepth: fc.constant(0),
  grade: between(-0.2, 0.2),
  airDensity: between(0.7, 1.4),
  airTemperature: between(-20, 45),
});

/** N: what a foot does. */
export const anyPedalForce = between(0, 1000);
