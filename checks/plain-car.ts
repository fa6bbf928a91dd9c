import {
  exampleRoad,
  exampleSetUp,
  pedalForceFor,
  type AxleBrake,
  type StopInput,
} from '@standstill/braking';

/** N of brake force at the road, all four wheels, per Pa of line pressure: worked out by hand below. */
const forcePerPressure = 2.56e-3;

export interface PlainStop {
  /** kg, all of it in the body: the wheels turn without inertia. */
  readonly mass: number;
  /** m/s. */
  readonly speed: number;
  /** N at the road, all four wheels, once the foot holds its force. */
  readonly brakeForce: number;
  /** s over which the foot's force rises in a straight line. */
  readonly rampTime: number;
}

/**
 * A stop of the whole chain with everything left out that books leave out: no booster, valve, lag, fade, drag, lift or
 * rolling resistance, and tires that nothing brings to their limit. The same brake on all wheels, its force by hand: 2
 * pads × friction 0.40 × 20 cm² of piston (50.46265 mm across) × 0.12 m = 1.92e-4 N m/Pa, over a tire of 0.30 m
 * 6.4e-4 N/Pa a wheel, 2.56e-3 N/Pa for the car.
 */
export function plainStop({ mass, speed, brakeForce, rampTime }: PlainStop): StopInput {
  const { car, frontBrake, frontTire, pedal } = exampleSetUp;
  const brake: AxleBrake = {
    ...frontBrake,
    caliper: { ...frontBrake.caliper, pistonDiameters: [0.05046265], pushOutPressure: 0, efficiency: 1 },
    pad: { ...frontBrake.pad, radialHeight: 0.04, frictionTemperatures: [20], frictions: [0.4] },
    rotor: { ...frontBrake.rotor, outerDiameter: 0.29, sweptOuterRadius: 0.14 },
    pressureAssumption: 'uniform-wear',
  };
  const tire = { ...frontTire, peakFriction: 3, loadSensitivity: 0, rollingRadius: 0.3 };
  const bare = { dragArea: 0, frontLiftArea: 0, rearLiftArea: 0, rollingResistance: 0 };
  const setUp = {
    ...exampleSetUp,
    car: { ...car, ...bare, mass, frontWheelInertia: 0, rearWheelInertia: 0 },
    frontTire: tire,
    rearTire: tire,
    pedal: { ...pedal, efficiency: 1 },
    booster: { kind: 'none' },
    rearValve: { kind: 'none' },
    antilock: { kind: 'none', electronicRearLimit: false },
    frontBrake: brake,
    rearBrake: brake,
  } as const;
  const force = pedalForceFor({ setUp, frontPressure: brakeForce / forcePerPressure });
  return { setUp, road: exampleRoad, foot: { force, rampTime }, speed, pressureLag: 0 };
}
