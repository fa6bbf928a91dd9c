import { BodyFigures } from './body-figures.ts';
import { FootCommand } from './foot-command.ts';
import { HydraulicLines } from './hydraulic-lines.ts';
import { LimitDriver } from './limit-driver.ts';
import type { SlipForceTable } from './slip-force-table.ts';
import { place } from './state-places.ts';
import { WheelFigures } from './wheel-figures.ts';

/**
 * How the state of a full stop changes: the right-hand side of its differential equations, and the forces behind it.
 *
 * Equation: m v' = −(Σ F + F_air + F_roll) − m g sin θ; J ω' = r F − T − T_engine; σ κ' = (u − r ω) − u κ with u the speed
 * of the wheels; F = F_peak(F_z) y(κ); T = 2 μ (p − p_0) A r_e η; pitch by `BodyFigures`; pressures by `HydraulicLines`.
 * A wheel that stands still stays so until the road turns it against its brake.
 * Assumes: pad friction changes in a straight line between two looks at the rotors' heat.
 * Source: [pacejka], [gillespie]
 */
export class StopDynamics {
  readonly body = new BodyFigures();
  readonly wheels = new WheelFigures();
  readonly lines = new HydraulicLines();
  readonly foot = new FootCommand();
  readonly driver = new LimitDriver();
  /** μ, 1, of each wheel's pads at `frictionTime`, s, and 1/s. */
  readonly frictions = new Float64Array(4);
  readonly frictionRates = new Float64Array(4);
  frictionTime = 0;
  /** N, N m and N of each wheel where the slopes were last taken; N of the whole car. */
  readonly forces = new Float64Array(4);
  readonly torques = new Float64Array(4);
  readonly loads = new Float64Array(4);
  readonly peaks = new Float64Array(4);
  air = 0;
  rolling = 0;
  /** m/s² of the center of gravity, positive while slowing. */
  deceleration = 0;
  /** Pa asked of the front outlet, and whether a driver has cut that back. */
  asked = 0;
  driverHolds = false;

  /** N m by which unequal forces turn the car, nose to the left positive. */
  yawMoment(): number {
    const { forces, wheels } = this;
    const front = wheels.frontHalfTrack * (forces[0]! - forces[1]!);
    return front + wheels.rearHalfTrack * (forces[2]! - forces[3]!);
  }

  /** m/s of the wheels. */
  wheelSpeed(state: Float64Array): number {
    return state[place.speed]! - this.body.pitchCarry * state[place.pitchRate]!;
  }

  /** Writes what each figure of `state` gains a second, at `time`, s, into `slopes`. */
  slopes(time: number, state: Float64Array, slopes: Float64Array): void {
    const { wheels, lines } = this;
    const speed = state[place.speed]! - this.body.pitchCarry * state[place.pitchRate]!;
    this.#load(state, speed);
    const since = time - this.frictionTime;
    const line = this.#press(time, since, state, slopes);
    const front = this.#turn(0, wheels.frontCurve, speed, since, state, slopes);
    const rear = this.#turn(2, wheels.rearCurve, speed, since, state, slopes);
    lines.rates(line, state, slopes);
    this.#slow(front + rear + this.rolling + this.air, speed, state, slopes);
    slopes[place.foot] = this.foot.seeks
      ? this.foot.forceRate(time, state[place.foot]!, this.deceleration)
      : 0;
  }

  /** Loads the wheels. */
  #load(state: Float64Array, speed: number): void {
    const { body, loads, peaks } = this;
    const { loadShares, peaks: tires } = this.wheels;
    const squared = speed * speed;
    const moved = body.transfer * (state[place.pitch]! + body.pitchLead * state[place.pitchRate]!);
    let front = body.frontStill - body.frontLift * squared + moved;
    let rear = body.rearStill - body.rearLift * squared - moved;
    if (rear < 0) {
      front += rear;
      rear = 0;
    } else if (front < 0) {
      rear += front;
      front = 0;
    }
    for (let wheel = 0; wheel < 4; wheel += 1) {
      const load = (wheel < 2 ? front : rear) * loadShares[wheel]!;
      loads[wheel] = load;
      peaks[wheel] = tires.at(wheel, load);
    }
    this.air = body.drag * squared;
    this.rolling = speed > 0 ? body.rolling * (front + rear) : 0;
  }

  /** Pa at the front outlet of the master cylinder. */
  #press(time: number, since: number, state: Float64Array, slopes: Float64Array): number {
    const { foot, lines, driver } = this;
    const force = foot.seeks ? state[place.foot]! : foot.forceAt(time);
    let asked = foot.pressureFor(force);
    if (driver.acts) asked = this.#heldBack(since, asked, state);
    this.asked = asked;
    if (lines.boosterLag === 0) {
      slopes[place.master] = 0;
      return asked;
    }
    const master = state[place.master]!;
    slopes[place.master] = (asked - master) / lines.boosterLag;
    return master;
  }

  #heldBack(since: number, asked: number, state: Float64Array): number {
    const { driver, wheels, lines, peaks } = this;
    const slowing = state[place.pitch]!;
    let least = asked;
    for (let wheel = 0; wheel < 4; wheel += 1) {
      const friction = this.frictions[wheel]! + this.frictionRates[wheel]! * since;
      const slip = state[place.slip + wheel]!;
      const allowed = driver.allowed(wheels, lines.rear, wheel, peaks[wheel]!, friction, slip, slowing);
      if (allowed >= least) continue;
      least = allowed;
      driver.holdsFront = wheel < 2;
    }
    this.driverHolds = least < asked;
    return least;
  }

  /** N that both tires of an axle take from the car's motion; `first` is its left wheel. */
  #turn(
    first: number,
    curve: SlipForceTable,
    speed: number,
    since: number,
    state: Float64Array,
    slopes: Float64Array,
  ): number {
    const { frictions, frictionRates, peaks, forces, torques } = this;
    const { radii, inertias, relaxations, gains, pushOuts, engineDrags } = this.wheels;
    const radius = radii[first]!;
    const perInertia = 1 / inertias[first]!;
    const perRelaxation = 1 / relaxations[first]!;
    const gain = gains[first]!;
    const pushOut = pushOuts[first]!;
    const engineDrag = engineDrags[first]!;
    const size = speed < 0 ? -speed : speed;
    let sum = 0;
    for (let wheel = first; wheel < first + 2; wheel += 1) {
      const slip = state[place.slip + wheel]!;
      const turning = state[place.wheel + wheel]!;
      const force = peaks[wheel]! * curve.at(slip);
      const above = state[place.pressure + wheel]! - pushOut;
      const friction = frictions[wheel]! + frictionRates[wheel]! * since;
      const torque = above > 0 ? gain * friction * above : 0;
      const net = radius * force - torque - engineDrag;
      slopes[place.wheel + wheel] = turning > 0 || net > 0 ? net * perInertia : 0;
      slopes[place.slip + wheel] = (speed - radius * turning - size * slip) * perRelaxation;
      forces[wheel] = force;
      torques[wheel] = torque;
      sum += force;
    }
    return sum;
  }

  #slow(force: number, speed: number, state: Float64Array, slopes: Float64Array): void {
    const { mass, climb, pitchRate, pitchDamping } = this.body;
    const pitching = state[place.pitchRate]!;
    this.deceleration = (force + climb) / mass;
    slopes[place.speed] = -this.deceleration;
    slopes[place.distance] = speed;
    slopes[place.pitch] = pitching;
    slopes[place.pitchRate] =
      pitchRate * (pitchRate * (force / mass - state[place.pitch]!) - 2 * pitchDamping * pitching);
  }
}
