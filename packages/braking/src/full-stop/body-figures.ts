import { requireRange } from '@standstill/numerics';
import { axleLoads } from '../load/axle-loads.ts';
import { standardGravity } from '../load/standard-gravity.ts';
import type { Road } from '../set-up/road.ts';
import type { SetUp } from '../set-up/set-up.ts';

/**
 * The car's body in the full stop, its figures worked out once.
 *
 * Equation: pitch θ by I θ'' + c θ' + K θ = h F, F all forces along the road but gravity's; with x = K θ / (h m):
 * x'' + 2 ζ Ω x' + Ω² x = Ω² F / m; load moved to the front (K θ + c θ') / L = m h / L (x + 2 ζ x' / Ω). The wheels run
 * at v − h θ' = v − ρ x' / Ω², ρ = h² m / I.
 * Assumes: pitching inertia I = m a b, a and b from the center of gravity to the axles (dynamic index 1, common
 * practice); every force along the road acts at the road, as in `axleLoads`.
 * Source: [gillespie]
 */
export class BodyFigures {
  /** m, kg. */
  mass = 1;
  /** 1/m, 1/kg. */
  perMass = 1;
  /** N on each axle at rest. */
  frontStill = 0;
  rearStill = 0;
  /** N s²/m²: lift of each axle and drag over speed squared. */
  frontLift = 0;
  rearLift = 0;
  drag = 0;
  /** f_r, 1. */
  rolling = 0;
  /** N against the motion, by grade. */
  climb = 0;
  /** m h / L, kg. */
  transfer = 0;
  /** Ω, rad/s; ζ, 1; ρ, 1. */
  pitchRate = 1;
  pitchDamping = 0;
  pitchShare = 0;
  /** ρ / Ω², s²: m/s by which the wheels are slower than the body for each m/s³ of x'. */
  pitchCarry = 0;
  /** 2 ζ / Ω, s. */
  pitchLead = 0;
  /** ρ / h, 1/m. */
  #angleFactor = 0;
  /** W for each (m/s³)² of x'. */
  #lossFactor = 0;

  /** Takes on car, road and the speed at the start, m/s. */
  take({ car }: SetUp, road: Road, speed: number): void {
    axleLoads({ car, deceleration: 0, speed, road });
    const weight = car.mass * standardGravity;
    const slopeLength = Math.sqrt(1 + road.grade * road.grade);
    const normal = weight / slopeLength;
    const lever = car.centerOfGravityHeight / car.wheelbase;
    this.mass = car.mass;
    this.perMass = 1 / car.mass;
    this.transfer = car.mass * lever;
    this.climb = (weight * road.grade) / slopeLength;
    this.frontStill = car.frontLoadShare * normal - this.climb * lever;
    this.rearStill = (1 - car.frontLoadShare) * normal + this.climb * lever;
    this.frontLift = 0.5 * road.airDensity * car.frontLiftArea;
    this.rearLift = 0.5 * road.airDensity * car.rearLiftArea;
    this.drag = 0.5 * road.airDensity * requireRange('drag area', car.dragArea, 'm²', 0, 20);
    this.rolling = requireRange('rolling resistance', car.rollingResistance, '', 0, 0.5);
    this.pitchRate = 2 * Math.PI * requireRange('pitch frequency', car.pitchFrequency, 'Hz', 0.3, 20);
    this.pitchDamping = requireRange('pitch damping', car.pitchDamping, '', 0.01, 3);
    this.pitchShare = (lever * lever) / (car.frontLoadShare * (1 - car.frontLoadShare));
    const height = car.centerOfGravityHeight;
    this.#angleFactor = height > 0 ? this.pitchShare / height : 0;
    const squared = this.pitchRate * this.pitchRate;
    this.pitchCarry = this.pitchShare / squared;
    this.pitchLead = (2 * this.pitchDamping) / this.pitchRate;
    this.#lossFactor = this.pitchLead * this.mass * this.pitchCarry;
  }

  /** rad, nose down, of a body pitched by x, m/s². */
  pitchAngle(x: number): number {
    return (this.#angleFactor * x) / (this.pitchRate * this.pitchRate);
  }

  /** J held by a body pitched by x, m/s², and pitching at x', m/s³. */
  pitchEnergy(x: number, rate: number): number {
    const squared = this.pitchRate * this.pitchRate;
    return ((0.5 * this.mass * this.pitchShare) / squared) * (x * x + (rate * rate) / squared);
  }

  /** W turned into heat in the dampers by a body pitching at x', m/s³. */
  pitchLoss(rate: number): number {
    return this.#lossFactor * rate * rate;
  }
}
