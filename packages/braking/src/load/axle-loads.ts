import { requireRange } from '@standstill/numerics';
import type { Car } from '../set-up/car.ts';
import type { Road } from '../set-up/road.ts';
import { standardGravity } from './standard-gravity.ts';

/** Loads of both axles in one instant. */
export interface AxleLoads {
  /** F_zf, N, both front wheels together. */
  readonly front: number;
  /** F_zr, N, both rear wheels together. */
  readonly rear: number;
  /** The axle that has left the road: there the steady model ends and the surface must say so. */
  readonly lifted: 'none' | 'front' | 'rear';
}

export interface AxleLoadsInput {
  readonly car: Car;
  /** a, m/s², positive while the car slows. */
  readonly deceleration: number;
  /** v, m/s. */
  readonly speed: number;
  readonly road: Road;
}

/**
 * Answers how much load each axle carries while the car slows.
 *
 * Equation: F_zf = ψ m g cos θ + m (a − g sin θ) h/L − ½ ρ v² C_Lf A;
 * F_zr = (1 − ψ) m g cos θ − m (a − g sin θ) h/L − ½ ρ v² C_Lr A; θ = atan(grade).
 * Assumes: steady pitch (the load has arrived). The lift areas are axle figures taken at the tires, so the pitching
 * moment of the air drag is inside them. An axle that would pull on the road carries nothing and the other one all.
 * Valid: a from −100 to 100 m/s², speed up to 150 m/s, grade from −1 to 1, lift below the weight.
 *
 * @param input - car; a, deceleration, m/s²; v, speed, m/s; road with grade (rise over run, 1) and air density, kg/m³
 * @returns N, load of the front and of the rear axle, and which axle has lifted
 * @throws OutOfRangeError where an input cannot be
 * Source: [gillespie]
 * @example
 * axleLoads({ car: exampleSetUp.car, deceleration: 0, speed: 0, road: exampleRoad }).front // => 6590.07
 */
export function axleLoads({ car, deceleration, speed, road }: AxleLoadsInput): AxleLoads {
  requireBody(car);
  requireMotion(deceleration, speed, road);
  const slopeLength = Math.sqrt(1 + road.grade * road.grade);
  const weight = car.mass * standardGravity;
  const normalWeight = weight / slopeLength;
  const transfer =
    ((car.mass * deceleration - (weight * road.grade) / slopeLength) * car.centerOfGravityHeight) /
    car.wheelbase;
  const airPressure = 0.5 * road.airDensity * speed * speed;
  const front = car.frontLoadShare * normalWeight + transfer - airPressure * car.frontLiftArea;
  const rear = (1 - car.frontLoadShare) * normalWeight - transfer - airPressure * car.rearLiftArea;
  return onRoad(front, rear);
}

function onRoad(front: number, rear: number): AxleLoads {
  const total = requireRange('weight less lift', front + rear, 'N', 0, 1e6);
  if (rear < 0) return { front: total, rear: 0, lifted: 'rear' };
  if (front < 0) return { front: 0, rear: total, lifted: 'front' };
  return { front, rear, lifted: 'none' };
}

function requireBody(car: Car): void {
  requireRange('mass', car.mass, 'kg', 50, 50_000);
  requireRange('wheelbase', car.wheelbase, 'm', 0.5, 10);
  requireRange('center of gravity height', car.centerOfGravityHeight, 'm', 0, 4);
  requireRange('front share of static load', car.frontLoadShare, '', 0.02, 0.98);
  requireRange('front lift area', car.frontLiftArea, 'm²', -20, 20);
  requireRange('rear lift area', car.rearLiftArea, 'm²', -20, 20);
}

function requireMotion(deceleration: number, speed: number, road: Road): void {
  requireRange('deceleration', deceleration, 'm/s²', -100, 100);
  requireRange('speed', speed, 'm/s', 0, 150);
  requireRange('grade', road.grade, '', -1, 1);
  requireRange('air density', road.airDensity, 'kg/m³', 0, 3);
}
