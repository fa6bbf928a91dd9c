import type { carFacts } from './car-facts.ts';
import type { loadFacts } from './laden-facts.ts';

/** A value of a class of cars: SI, one standard deviation over the class. */
interface CarClassValue {
  readonly value: number;
  readonly spread: number;
}

type AssumableCarFact = Exclude<
  keyof typeof carFacts,
  'mass' | 'wheelbase' | 'drivelineInertia' | 'engineDrag'
>;

export interface CarClass {
  readonly title: string;
  readonly facts: Readonly<Record<AssumableCarFact, CarClassValue>>;
  /** Passengers and luggage on top of the test mass: kg, share on the front axle, m above the road. */
  readonly load: Readonly<Record<keyof typeof loadFacts, CarClassValue>>;
}

const everyCar = {
  leftLoadShare: { value: 0.5, spread: 0.01 },
  frontLiftArea: { value: 0.05, spread: 0.06 },
  rearLiftArea: { value: 0.08, spread: 0.06 },
  rollingResistance: { value: 0.012, spread: 0.002 },
  pitchFrequency: { value: 1.5, spread: 0.2 },
  pitchDamping: { value: 0.35, spread: 0.08 },
} as const;

function inertia(value: number): CarClassValue {
  return { value, spread: 0.2 * value };
}

type ValueAndSpread = readonly [value: number, spread: number];

/** The seats beside the driver's filled, and luggage. */
function load(mass: ValueAndSpread, frontShare: ValueAndSpread, height: ValueAndSpread): CarClass['load'] {
  const of = ([value, spread]: ValueAndSpread): CarClassValue => ({ value, spread });
  return { mass: of(mass), frontLoadShare: of(frontShare), centerOfGravityHeight: of(height) };
}

/**
 * What to assume of a car whose owner has not measured it: common practice, no published figure stands behind one
 * class. The spread is that of cars within the class; the load shares are worth a set of scales.
 */
export const carClasses = {
  twoSeatCoupe: {
    title: 'two-seat coupe or roadster, engine in front',
    load: load([120, 30], [0.3, 0.1], [0.55, 0.08]),
    facts: {
      ...everyCar,
      frontTrack: { value: 1.44, spread: 0.04 },
      rearTrack: { value: 1.44, spread: 0.04 },
      frontDriveShare: { value: 0, spread: 0 },
      centerOfGravityHeight: { value: 0.47, spread: 0.03 },
      frontLoadShare: { value: 0.52, spread: 0.02 },
      dragArea: { value: 0.62, spread: 0.06 },
      frontWheelInertia: inertia(1.0),
      rearWheelInertia: inertia(1.0),
    },
  },
  midEngine: {
    title: 'two-seat car, engine behind the seats',
    load: load([100, 25], [0.45, 0.1], [0.5, 0.08]),
    facts: {
      ...everyCar,
      frontTrack: { value: 1.5, spread: 0.04 },
      rearTrack: { value: 1.5, spread: 0.04 },
      frontDriveShare: { value: 0, spread: 0 },
      centerOfGravityHeight: { value: 0.45, spread: 0.03 },
      frontLoadShare: { value: 0.42, spread: 0.02 },
      dragArea: { value: 0.62, spread: 0.06 },
      frontWheelInertia: inertia(0.95),
      rearWheelInertia: inertia(1.15),
    },
  },
  compact: {
    title: 'compact car, front-wheel drive',
    load: load([300, 60], [0.28, 0.08], [0.65, 0.08]),
    facts: {
      ...everyCar,
      frontTrack: { value: 1.48, spread: 0.04 },
      rearTrack: { value: 1.48, spread: 0.04 },
      frontDriveShare: { value: 1, spread: 0 },
      centerOfGravityHeight: { value: 0.53, spread: 0.03 },
      frontLoadShare: { value: 0.61, spread: 0.02 },
      dragArea: { value: 0.68, spread: 0.06 },
      frontWheelInertia: inertia(0.95),
      rearWheelInertia: inertia(0.9),
    },
  },
  sedan: {
    title: 'sedan or wagon',
    load: load([350, 60], [0.25, 0.08], [0.65, 0.08]),
    facts: {
      ...everyCar,
      frontTrack: { value: 1.55, spread: 0.04 },
      rearTrack: { value: 1.55, spread: 0.04 },
      frontDriveShare: { value: 0, spread: 0 },
      centerOfGravityHeight: { value: 0.55, spread: 0.03 },
      frontLoadShare: { value: 0.55, spread: 0.03 },
      dragArea: { value: 0.66, spread: 0.06 },
      frontWheelInertia: inertia(1.2),
      rearWheelInertia: inertia(1.2),
    },
  },
  utility: {
    title: 'sport utility or pickup',
    load: load([450, 120], [0.2, 0.1], [0.85, 0.1]),
    facts: {
      ...everyCar,
      frontTrack: { value: 1.62, spread: 0.04 },
      rearTrack: { value: 1.62, spread: 0.04 },
      frontDriveShare: { value: 0, spread: 0 },
      centerOfGravityHeight: { value: 0.68, spread: 0.05 },
      frontLoadShare: { value: 0.56, spread: 0.03 },
      dragArea: { value: 1.0, spread: 0.12 },
      frontWheelInertia: inertia(2.0),
      rearWheelInertia: inertia(2.0),
    },
  },
  anyCar: {
    title: 'passenger car of no stated class',
    load: load([300, 120], [0.27, 0.1], [0.65, 0.1]),
    facts: {
      ...everyCar,
      frontTrack: { value: 1.52, spread: 0.04 },
      rearTrack: { value: 1.52, spread: 0.04 },
      frontDriveShare: { value: 0.5, spread: 0 },
      centerOfGravityHeight: { value: 0.53, spread: 0.06 },
      frontLoadShare: { value: 0.55, spread: 0.05 },
      dragArea: { value: 0.7, spread: 0.12 },
      frontWheelInertia: inertia(1.1),
      rearWheelInertia: inertia(1.1),
    },
  },
} as const satisfies Readonly<Record<string, CarClass>>;
