import type { RandomStream } from '@standstill/numerics';
import { axleLoads } from '../load/axle-loads.ts';
import { brakeTorque } from '../corner/brake-torque.ts';
import { linePressures } from '../foot-to-pressure/line-pressures.ts';
import { standardGravity } from '../load/standard-gravity.ts';
import type { Antilock } from '../set-up/antilock.ts';
import type { AxleBrake } from '../set-up/axle-brake.ts';
import type { Booster } from '../set-up/booster.ts';
import type { Car } from '../set-up/car.ts';
import { exampleSetUp } from '../set-up/example-set-up.ts';
import type { Pad } from '../set-up/pad.ts';
import type { RearValve } from '../set-up/rear-valve.ts';
import type { Road } from '../set-up/road.ts';
import type { SetUp } from '../set-up/set-up.ts';
import type { Tire } from '../set-up/tire.ts';
import type { StopInput } from '../stop/stop-input.ts';
import { tirePeakForce } from '../tire/tire-peak-force.ts';

/** The kinds of stop that the quick and the full stop are set side by side in. */
export const stopKinds = [
  'torque-limited',
  'antilock dry',
  'antilock wet',
  'locked',
  'fading',
  'driver at the limit',
] as const;
export type StopKind = (typeof stopKinds)[number];

/** A number between two bounds, each as likely. */
type Draw = (low: number, high: number) => number;

/**
 * A stop of one kind by an invented car that could be a road car; `stream` decides it. Ranges in the code, and named in
 * docs/quick-against-full.md.
 */
export function drawStop(stream: RandomStream, kind: StopKind): StopInput {
  const draw: Draw = (low, high) => low + (high - low) * stream.uniform();
  const pick = <T>(items: readonly T[]): T => items[stream.below(items.length)]!;
  const car = drawCar(draw, pick);
  const road = drawRoad(draw, kind);
  const setUp: SetUp = {
    ...exampleSetUp,
    car,
    ...drawTires(draw, car),
    ...drawBrakes(draw, car, kind),
    booster: drawBooster(draw, pick),
    rearValve: pick<RearValve>([
      { kind: 'none' },
      { kind: 'proportioning', kneePressure: draw(2e6, 4e6), slope: draw(0.3, 0.6) },
    ]),
    antilock: antilockOf(kind, draw(1.5, 3)),
  };
  const speed = draw(14, 45);
  const start = kind === 'fading' ? draw(250, 480) : draw(40, 150);
  const rotorTemperatures = { front: start, rear: start * draw(0.5, 1) };
  const stop = { setUp, road, speed, rotorTemperatures, foot: { force: 300, rampTime: draw(0.08, 0.5) } };
  const isShort = kind === 'torque-limited' || kind === 'fading';
  const force = forceForUse(stop, isShort ? draw(0.4, 0.9) : draw(1.2, 2.2));
  const slides = kind === 'torque-limited' || kind === 'fading' || kind === 'locked';
  return { ...stop, foot: { ...stop.foot, force }, ...(slides ? { lockedWheels: true } : {}) };
}

function drawCar(draw: Draw, pick: <T>(items: readonly T[]) => T): Car {
  const wheelInertia = draw(0.7, 1.8);
  return {
    mass: draw(700, 2300),
    wheelbase: draw(2.2, 3),
    centerOfGravityHeight: draw(0.42, 0.65),
    frontLoadShare: draw(0.42, 0.64),
    leftLoadShare: draw(0.47, 0.53),
    dragArea: draw(0.45, 0.95),
    frontLiftArea: draw(-0.2, 0.12),
    rearLiftArea: draw(-0.3, 0.15),
    rollingResistance: draw(0.008, 0.018),
    frontWheelInertia: wheelInertia,
    rearWheelInertia: wheelInertia * draw(0.8, 1),
    frontTrack: draw(1.3, 1.65),
    rearTrack: draw(1.3, 1.65),
    pitchFrequency: draw(1.1, 2.2),
    pitchDamping: draw(0.2, 0.5),
    drivelineInertia: pick([0, draw(0.5, 4)]),
    engineDrag: pick([0, draw(10, 80)]),
    frontDriveShare: pick([0, 0.5, 1]),
  };
}

/** A wet road is a damp one or one with a film of water, each as likely. */
function drawRoad(draw: Draw, kind: StopKind): Road {
  const isWet = kind === 'antilock wet';
  const hasFilm = draw(0, 1) < 0.5;
  const damp = draw(0.6, 0.85);
  const film = draw(0.0001, 0.001);
  const dry = draw(0.9, 1.05);
  return {
    surfaceFactor: isWet && !hasFilm ? damp : dry,
    waterDepth: isWet && hasFilm ? film : 0,
    grade: draw(-0.04, 0.04),
    airDensity: draw(1, 1.3),
    airTemperature: draw(0, 35),
  };
}

function drawTires(draw: Draw, { mass }: Car): Pick<SetUp, 'frontTire' | 'rearTire'> {
  const peakSlip = draw(0.07, 0.15);
  const front: Tire = {
    peakFriction: draw(0.85, 1.25),
    nominalLoad: draw(0.8, 1.2) * (mass / 4) * standardGravity,
    loadSensitivity: draw(0.04, 0.18),
    slideRatio: draw(0.7, 0.88),
    peakSlip,
    slipStiffness: draw(2.1, 3) / peakSlip,
    relaxationLength: draw(0.1, 0.35),
    treadDepth: draw(0.003, 0.008),
    rollingRadius: draw(0.28, 0.36),
  };
  return { frontTire: front, rearTire: { ...front, peakFriction: front.peakFriction * draw(0.95, 1.05) } };
}

function drawBrakes(draw: Draw, { mass }: Car, kind: StopKind): Pick<SetUp, 'frontBrake' | 'rearBrake'> {
  const size = Math.cbrt(mass / 1200);
  const { frontBrake, rearBrake } = exampleSetUp;
  const pad = kind === 'fading' ? fadingPad(draw, frontBrake.pad) : warmPad(draw, frontBrake.pad);
  return {
    frontBrake: drawBrake(draw, frontBrake, size * draw(0.92, 1.15), pad),
    rearBrake: drawBrake(draw, rearBrake, size * draw(0.9, 1.15), {
      ...pad,
      area: rearBrake.pad.area,
      radialHeight: rearBrake.pad.radialHeight,
    }),
  };
}

function drawBrake(draw: Draw, brake: AxleBrake, size: number, pad: Pad): AxleBrake {
  const { caliper, rotor, tube, hose } = brake;
  return {
    ...brake,
    caliper: {
      ...caliper,
      pistonDiameters: caliper.pistonDiameters.map((diameter) => diameter * size),
      pushOutPressure: draw(0.02e6, 0.12e6),
      volumeCompliance: caliper.volumeCompliance * draw(0.6, 2),
    },
    pad,
    rotor: {
      ...rotor,
      outerDiameter: rotor.outerDiameter * size,
      sweptOuterRadius: rotor.sweptOuterRadius * size,
      mass: rotor.mass * size ** 3,
      ringMass: rotor.ringMass * size ** 3,
    },
    hose: { ...hose, length: draw(0.3, 0.6) },
    tube: { ...tube, length: tube.length * draw(0.7, 1.3) },
  };
}

/** Friction that stays within a few hundredths over what a stop warms the face to. */
function warmPad(draw: Draw, pad: Pad): Pad {
  const level = draw(0.85, 1.15);
  return { ...pad, frictions: pad.frictions.map((friction) => friction * level) };
}

/** Friction that falls from 250 °C on. */
function fadingPad(draw: Draw, pad: Pad): Pad {
  const cold = draw(0.36, 0.46);
  const frictions = [cold, cold, cold * draw(0.7, 0.9), cold * draw(0.45, 0.65)];
  return { ...pad, frictionTemperatures: [20, 250, 450, 700], frictions };
}

function drawBooster(draw: Draw, pick: <T>(items: readonly T[]) => T): Booster {
  return pick<Booster>([
    { kind: 'none' },
    {
      kind: 'vacuum',
      gain: draw(3, 6),
      jumpInForce: draw(80, 250),
      diaphragmArea: draw(0.035, 0.06),
      vacuum: draw(50e3, 75e3),
      efficiency: 0.95,
    },
    {
      kind: 'vacuum',
      gain: draw(3, 6),
      jumpInForce: draw(80, 250),
      diaphragmArea: draw(0.035, 0.06),
      vacuum: draw(50e3, 75e3),
      efficiency: 0.95,
    },
    { kind: 'hydraulic', gain: draw(4, 7), greatestAssist: draw(2500, 5000) },
  ]);
}

function antilockOf(kind: StopKind, minimumSpeed: number): Antilock {
  if (kind === 'antilock dry' || kind === 'antilock wet')
    return { kind: 'threshold', efficiency: 0.92, minimumSpeed, electronicRearLimit: true };
  return { kind: 'none', electronicRearLimit: false };
}

/** N at the pedal at which the front axle asks `use` times what its tires can give; the rear one no more than that, too. */
function forceForUse(stop: StopInput, use: number): number {
  let low = 1;
  let high = 3000;
  for (let i = 0; i < 50; i += 1) {
    const middle = 0.5 * (low + high);
    if (useAt(stop, middle) < use) low = middle;
    else high = middle;
  }
  return low;
}

/** The greater of both axles' brake force over what its tires can give while the car slows by it, 1. */
function useAt({ setUp, road }: StopInput, pedalForce: number): number {
  const { car } = setUp;
  const pressures = linePressures({ setUp, pedalForce });
  const front = mostAsked(setUp.frontBrake, pressures.front, setUp.frontTire);
  const rear = mostAsked(setUp.rearBrake, pressures.rear, setUp.rearTire);
  const most = setUp.frontTire.peakFriction * road.surfaceFactor * standardGravity;
  const deceleration = Math.min(most, (front + rear) / car.mass);
  const loads = axleLoads({ car, deceleration, speed: 0, road });
  const give = (tire: Tire, load: number): number =>
    2 * tirePeakForce({ tire, load: load / 2, surfaceFactor: road.surfaceFactor });
  return Math.max(
    front / give(setUp.frontTire, loads.front),
    rear / Math.max(1, give(setUp.rearTire, loads.rear)),
  );
}

/** N that both brakes of an axle ask at a pressure, Pa, with the most friction that their pads have. */
function mostAsked(brake: AxleBrake, pressure: number, tire: Tire): number {
  const friction = Math.max(...brake.pad.frictions);
  return (2 * brakeTorque({ brake, pressure, friction })) / tire.rollingRadius;
}
