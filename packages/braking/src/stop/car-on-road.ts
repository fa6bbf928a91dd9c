import { requireRange } from '@standstill/numerics';
import { axleLoads } from '../load/axle-loads.ts';
import { standardGravity } from '../load/standard-gravity.ts';
import type { BrakedAxle } from './braked-axle.ts';
import type { StopInput } from './stop-input.ts';

/**
 * The car's body in the quick stop: what it loads its axles with, and what slows it besides the brakes. The same loads
 * as `axleLoads`, its figures taken once.
 *
 * Equation: R = ½ ρ C_d A v² + f_r (N − lift) + m g sin θ; loads as `axleLoads`.
 * Source: [gillespie]
 */
export class CarOnRoad {
  /** m, kg. */
  mass = 1;
  /** N against the motion at the present speed. */
  airDrag = 0;
  rolling = 0;
  /** N against the motion, by grade; negative downhill. */
  climb = 0;
  /** N on each axle at rest. */
  frontStill = 0;
  rearStill = 0;
  /** m h / L, kg. */
  #transfer = 0;
  #frontLift = 0;
  #rearLift = 0;
  #dragFactor = 0;
  #rollingShare = 0;
  /** N on each axle at the present speed, before what deceleration moves. */
  #frontNow = 0;
  #rearNow = 0;

  /** Takes on car and road. */
  take({ setUp, road, speed }: StopInput): void {
    const { car } = setUp;
    axleLoads({ car, deceleration: 0, speed, road });
    const weight = car.mass * standardGravity;
    const slopeLength = Math.sqrt(1 + road.grade * road.grade);
    const normal = weight / slopeLength;
    this.mass = car.mass;
    this.#transfer = (car.mass * car.centerOfGravityHeight) / car.wheelbase;
    this.climb = (weight * road.grade) / slopeLength;
    const tilted = (this.climb * car.centerOfGravityHeight) / car.wheelbase;
    this.frontStill = car.frontLoadShare * normal - tilted;
    this.rearStill = (1 - car.frontLoadShare) * normal + tilted;
    this.#frontLift = 0.5 * road.airDensity * car.frontLiftArea;
    this.#rearLift = 0.5 * road.airDensity * car.rearLiftArea;
    this.#dragFactor = 0.5 * road.airDensity * requireRange('drag area', car.dragArea, 'm²', 0, 20);
    this.#rollingShare = requireRange('rolling resistance', car.rollingResistance, '', 0, 0.5);
  }

  /** Sets what follows from speed, m/s, alone. */
  standAt(speed: number): void {
    const squared = speed * speed;
    this.#frontNow = this.frontStill - this.#frontLift * squared;
    this.#rearNow = this.rearStill - this.#rearLift * squared;
    this.airDrag = this.#dragFactor * squared;
    this.rolling = this.#rollingShare * (this.#frontNow + this.#rearNow);
  }

  /** N against the motion besides the tires' brake forces. */
  resistance(): number {
    return this.airDrag + this.rolling + this.climb;
  }

  /** Loads both axles as a deceleration, m/s², does; an axle that leaves the road carries nothing. */
  weigh(front: BrakedAxle, rear: BrakedAxle, deceleration: number): void {
    const moved = this.#transfer * deceleration;
    const frontLoad = this.#frontNow + moved;
    const rearLoad = this.#rearNow - moved;
    if (rearLoad < 0) {
      front.carry(frontLoad + rearLoad, 0);
      rear.carry(0, 0);
    } else if (frontLoad < 0) {
      front.carry(0, 0);
      rear.carry(frontLoad + rearLoad, 0);
    } else {
      front.carry(frontLoad, this.#transfer);
      rear.carry(rearLoad, -this.#transfer);
    }
  }
}
