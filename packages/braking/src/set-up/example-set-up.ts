import type { AxleBrake } from './axle-brake.ts';
import type { Car } from './car.ts';
import type { DrumBrake } from './drum-brake.ts';
import type { Road } from './road.ts';
import type { SetUp } from './set-up.ts';
import type { Tire } from './tire.ts';

const car: Car = {
  mass: 1200,
  wheelbase: 2.4,
  centerOfGravityHeight: 0.48,
  frontLoadShare: 0.56,
  leftLoadShare: 0.5,
  dragArea: 0.65,
  frontLiftArea: 0.05,
  rearLiftArea: 0.08,
  rollingResistance: 0.012,
  frontWheelInertia: 1,
  rearWheelInertia: 0.9,
  frontTrack: 1.44,
  rearTrack: 1.44,
  pitchFrequency: 1.4,
  pitchDamping: 0.35,
  drivelineInertia: 0,
  engineDrag: 0,
  frontDriveShare: 0,
};

const tire: Tire = {
  peakFriction: 1,
  nominalLoad: 3500,
  loadSensitivity: 0.1,
  slideRatio: 0.8,
  peakSlip: 0.1,
  slipStiffness: 22,
  relaxationLength: 0.2,
  treadDepth: 0.007,
  rollingRadius: 0.31,
};

const frontBrake: AxleBrake = {
  kind: 'disc',
  caliper: {
    kind: 'floating',
    pistonDiameters: [0.054],
    pushOutPressure: 50_000,
    efficiency: 0.95,
    volumeCompliance: 6e-14,
    mass: 4,
  },
  pad: {
    area: 0.0045,
    radialHeight: 0.045,
    thickness: 0.01,
    frictionTemperatures: [20, 100, 300, 500, 650],
    frictions: [0.36, 0.4, 0.42, 0.36, 0.24],
    compressibility: 1e-11,
    mass: 0.35,
    specificHeat: 1000,
    conductivity: 1.2,
    density: 2500,
  },
  rotor: {
    kind: 'vented',
    outerDiameter: 0.28,
    thickness: 0.022,
    cheekThickness: 0.007,
    sweptOuterRadius: 0.138,
    mass: 6.2,
    ringMass: 4.4,
    density: 7200,
    specificHeat: 460,
    specificHeatSlope: 0.35,
    conductivity: 48,
    emissivity: 0.55,
  },
  hose: { length: 0.4, pressures: [6.895e6, 10.342e6, 19.995e6], expansions: [0.45e-6, 0.55e-6, 0.9e-6] },
  tube: { length: 1.2, innerDiameter: 0.0032, wallThickness: 0.0007, elasticModulus: 200e9 },
  runningClearance: 0.0001,
  pressureAssumption: 'uniform-wear',
};

const rearBrake: AxleBrake = {
  ...frontBrake,
  caliper: { ...frontBrake.caliper, pistonDiameters: [0.034], volumeCompliance: 3e-14, mass: 2.8 },
  pad: { ...frontBrake.pad, area: 0.0026, radialHeight: 0.038, mass: 0.22 },
  rotor: {
    ...frontBrake.rotor,
    kind: 'solid',
    outerDiameter: 0.26,
    thickness: 0.01,
    cheekThickness: 0.005,
    sweptOuterRadius: 0.128,
    mass: 3.6,
    ringMass: 2.2,
  },
  tube: { ...frontBrake.tube, length: 2.8 },
};

/**
 * An invented light coupe with invented parts: what the examples in the docstrings and the tests start from.
 * No maker's data stand in it and nothing in the program falls back to it.
 */
export const exampleSetUp: SetUp = {
  car,
  frontTire: tire,
  rearTire: tire,
  pedal: { ratio: 4, efficiency: 0.9, freePlay: 0.006, flex: 2e-6, availableTravel: 0.13 },
  booster: {
    kind: 'vacuum',
    gain: 4,
    jumpInForce: 150,
    diaphragmArea: 0.042,
    vacuum: 65_000,
    efficiency: 0.95,
  },
  masterCylinder: { kind: 'tandem', bore: 0.0222, stroke: 0.034, efficiency: 0.96 },
  circuitSplit: 'front-rear',
  rearValve: { kind: 'proportioning', kneePressure: 3e6, slope: 0.35 },
  antilock: { kind: 'threshold', efficiency: 0.92, minimumSpeed: 2, electronicRearLimit: true },
  fluid: {
    bulkModulus: 1.6e9,
    volume: 1.8e-4,
    trappedAir: 0.3e-6,
    dryBoilingPoint: 230,
    wetBoilingPoint: 155,
    age: 3.2e7,
    waterPerYear: 0.015,
  },
  frontBrake,
  rearBrake,
};

/** A dry, level road at 20 °C near sea level, for examples and tests. */
export const exampleRoad: Road = {
  surfaceFactor: 1,
  waterDepth: 0,
  grade: 0,
  airDensity: 1.2,
  airTemperature: 20,
};

/** An invented drum brake for the rear of the invented coupe, for examples and tests. */
export const exampleDrum: DrumBrake = {
  arrangement: 'simplex',
  shoes: { pivotDistance: 0.85, leverArm: 1.55, liningStart: 0.44, liningEnd: 2.36 },
  brakeFactor: 2,
  radius: 0.1145,
  width: 0.045,
  wallThickness: 0.008,
  mass: 4.5,
  density: 7200,
  specificHeat: 460,
  specificHeatSlope: 0.35,
  conductivity: 48,
  emissivity: 0.55,
  cylinderBore: 0.0191,
  pushOutPressure: 400_000,
  efficiency: 0.96,
  volumeCompliance: 1.2e-14,
  shoeClearance: 0.00025,
  liningArea: 0.0099,
  liningThickness: 0.0045,
  frictionTemperatures: [20, 100, 200, 300, 400],
  frictions: [0.36, 0.38, 0.38, 0.33, 0.26],
  compressibility: 2e-11,
  liningSpecificHeat: 1000,
  liningConductivity: 1,
  liningDensity: 2000,
  hose: frontBrake.hose,
  tube: rearBrake.tube,
};
