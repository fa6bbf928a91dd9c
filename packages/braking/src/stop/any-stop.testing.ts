import fc from 'fast-check';
import { linePressures } from '../foot-to-pressure/line-pressures.ts';
import { anyRoad, anySetUp } from '../set-up/any-set-up.testing.ts';
import type { Antilock } from '../set-up/antilock.ts';
import type { AxleBrake } from '../set-up/axle-brake.ts';
import { exampleRoad, exampleSetUp } from '../set-up/example-set-up.ts';
import type { SetUp } from '../set-up/set-up.ts';
import type { StopInput } from './stop-input.ts';

export function between(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
}

const anyAntilock: fc.Arbitrary<Antilock> = fc.oneof(
  fc.record({ kind: fc.constant('none' as const), electronicRearLimit: fc.boolean() }),
  fc.record({
    kind: fc.constant('threshold' as const),
    efficiency: between(0.75, 1),
    minimumSpeed: between(0, 4),
    electronicRearLimit: fc.boolean(),
  }),
);

/** m: mostly none. */
const anyWaterDepth = fc.oneof(
  { weight: 3, arbitrary: fc.constant(0) },
  { weight: 1, arbitrary: between(0, 0.002) },
);

/** Pads that rise, hold and fade. */
const anyFade = fc.tuple(between(0.25, 0.5), between(0.3, 0.6), between(0.1, 0.5));

function withFade(brake: AxleBrake, [cold, warm, hot]: readonly number[]): AxleBrake {
  const pad = { ...brake.pad, frictionTemperatures: [20, 250, 650], frictions: [cold!, warm!, hot!] };
  return { ...brake, pad };
}

/** Whether the lines stay under what a brake could bear. */
function bearable({ setUp, foot }: StopInput): boolean {
  const { front, rear } = linePressures({ setUp, pedalForce: foot.force });
  return front < 40e6 && rear < 40e6;
}

/** Stops over a wide range of cars, brakes, roads and feet, with and without antilock; most of them odd. */
export const anyStop: fc.Arbitrary<StopInput> = fc
  .record({
    base: anySetUp,
    antilock: anyAntilock,
    fades: fc.tuple(anyFade, anyFade),
    road: anyRoad.map((road) => ({ ...road, grade: road.grade / 2 })),
    waterDepth: anyWaterDepth,
    foot: fc.record({ force: between(30, 700), rampTime: fc.oneof(fc.constant(0), between(0.02, 1)) }),
    speed: between(3, 60),
    rotorTemperatures: fc.record({ front: between(0, 450), rear: between(0, 450) }),
    lockedWheels: fc.boolean(),
  })
  .map(({ base, antilock, fades, road, waterDepth, ...stop }) => ({
    ...stop,
    road: { ...road, waterDepth },
    setUp: {
      ...base,
      antilock,
      frontBrake: withFade(base.frontBrake, fades[0]),
      rearBrake: withFade(base.rearBrake, fades[1]),
    },
  }))
  .filter(bearable);

/** The example set-up and what is near it, driven as people test. */
export const anyUsualStop: fc.Arbitrary<StopInput> = fc
  .record({
    antilock: fc.oneof(
      fc.record({ kind: fc.constant('none' as const), electronicRearLimit: fc.boolean() }),
      fc.record({
        kind: fc.constant('threshold' as const),
        efficiency: between(0.85, 0.97),
        minimumSpeed: between(1, 3),
        electronicRearLimit: fc.boolean(),
      }),
    ),
    mass: between(800, 1800),
    peakFriction: between(0.8, 1.2),
    loadSensitivity: between(0, 0.2),
    waterDepth: anyWaterDepth,
    drivelineInertia: fc.oneof(fc.constant(0), between(0, 5)),
    engineDrag: fc.oneof(fc.constant(0), between(0, 120)),
    frontDriveShare: between(0, 1),
    foot: fc.record({ force: between(80, 500), rampTime: between(0.05, 0.6) }),
    speed: between(10, 45),
    rotorTemperatures: fc.record({ front: between(20, 300), rear: between(20, 300) }),
    lockedWheels: fc.boolean(),
  })
  .map(({ antilock, mass, peakFriction, loadSensitivity, waterDepth, ...rest }) => {
    const { drivelineInertia, engineDrag, frontDriveShare, ...stop } = rest;
    const tire = { ...exampleSetUp.frontTire, peakFriction, loadSensitivity };
    const car = { ...exampleSetUp.car, mass, drivelineInertia, engineDrag, frontDriveShare };
    const setUp = { ...exampleSetUp, car, antilock, frontTire: tire, rearTire: tire };
    return { ...stop, setUp, road: { ...exampleRoad, waterDepth } };
  });

/** The same set-up on tires that no brake brings to their limit. */
export function onStickyTires(setUp: SetUp): SetUp {
  const sticky = { peakFriction: 3, loadSensitivity: 0 };
  return {
    ...setUp,
    frontTire: { ...setUp.frontTire, ...sticky },
    rearTire: { ...setUp.rearTire, ...sticky },
  };
}

/** The same stop without drag, lift, rolling resistance, engine drag and grade. */
export function withoutResistance(stop: StopInput): StopInput {
  const still = { dragArea: 0, frontLiftArea: 0, rearLiftArea: 0, rollingResistance: 0, engineDrag: 0 };
  const setUp = { ...stop.setUp, car: { ...stop.setUp.car, ...still } };
  return { ...stop, setUp, road: { ...stop.road, grade: 0 } };
}

/** The same stop on a dry road, on four tires of one constant friction. */
export function onOneFriction(stop: StopInput, friction: number): StopInput {
  const tire = { ...stop.setUp.frontTire, peakFriction: friction, loadSensitivity: 0 };
  const road = { ...stop.road, surfaceFactor: 1, waterDepth: 0 };
  return { ...stop, road, setUp: { ...stop.setUp, frontTire: tire, rearTire: tire } };
}
