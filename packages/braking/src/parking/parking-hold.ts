import { requireRange } from '@standstill/numerics';
import { standardGravity } from '../load/standard-gravity.ts';
import type { Car } from '../set-up/car.ts';
import type { Tire } from '../set-up/tire.ts';

export interface ParkingHoldInput {
  readonly car: Pick<Car, 'mass' | 'wheelbase' | 'centerOfGravityHeight' | 'frontLoadShare'>;
  readonly tire: Pick<Tire, 'rollingRadius' | 'peakFriction'>;
  /** T, N m, holding torque of ONE wheel. */
  readonly torque: number;
  readonly axle: 'front' | 'rear';
  /** 1, factor on the tires' dry peak friction. */
  readonly surfaceFactor: number;
}

/** What a parked car holds on; grades as rise over run, 1. */
export interface ParkingHold {
  /** Steepest grade that the brake holds, whichever way the car points. */
  readonly byBrake: number;
  /** Steepest grade on which the tires of that axle do not slide, nose uphill. */
  readonly byTiresUphill: number;
  /** The same, nose downhill. */
  readonly byTiresDownhill: number;
  /** Steepest grade held both ways: the least of the three. */
  readonly held: number;
}

/** Past this a grade is a wall and stands for "any". */
const steepest = 10;

/**
 * Answers how steep a grade a parking brake holds the car on, both ways.
 *
 * Equation: brake: sin θ = 2 T / (r m g); tires: tan θ = μ λ / (1 ∓ μ h/L) of the braked axle's load share λ, upper sign
 * where the slope loads that axle.
 * Assumes: one axle braked, gearbox in neutral, peak friction without load sensitivity, no rolling resistance.
 * Valid: surface factor 0.02 to 2. Grades are cut at 10.
 *
 * @param input - car; tire with r, m, and peak friction, 1; T, N m; axle; surface factor, 1
 * @returns grades, rise over run, 1
 * @throws OutOfRangeError where an input cannot be
 * Source: [textbook-formula]
 * @example
 * parkingHold({ car: exampleSetUp.car, tire: exampleSetUp.rearTire, torque: 400, axle: 'rear', surfaceFactor: 1 }).byBrake // => 0.224765
 */
export function parkingHold({ car, tire, torque, axle, surfaceFactor }: ParkingHoldInput): ParkingHold {
  const weight = requireRange('mass', car.mass, 'kg', 50, 50_000) * standardGravity;
  const radius = requireRange('rolling radius', tire.rollingRadius, 'm', 0.1, 1);
  const sine = (2 * requireRange('holding torque', torque, 'N m', 0, 1e5)) / (radius * weight);
  const byBrake = sine >= 1 ? steepest : Math.min(steepest, sine / Math.sqrt(1 - sine * sine));
  const friction = tire.peakFriction * requireRange('surface factor', surfaceFactor, '', 0.02, 2);
  const front = requireRange('front share of static load', car.frontLoadShare, '', 0.02, 0.98);
  const share = axle === 'rear' ? 1 - front : front;
  const tilt =
    (friction * requireRange('center of gravity height', car.centerOfGravityHeight, 'm', 0, 4)) /
    requireRange('wheelbase', car.wheelbase, 'm', 0.5, 10);
  const loaded = tilt >= 1 ? steepest : Math.min(steepest, (friction * share) / (1 - tilt));
  const unloaded = (friction * share) / (1 + tilt);
  const [byTiresUphill, byTiresDownhill] = axle === 'rear' ? [loaded, unloaded] : [unloaded, loaded];
  return { byBrake, byTiresUphill, byTiresDownhill, held: Math.min(byBrake, byTiresUphill, byTiresDownhill) };
}
