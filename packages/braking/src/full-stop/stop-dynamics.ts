import { BodyFigures } from './body-figures.ts';
import { FootCommand } from './foot-command.ts';
import { HydraulicLines, valve } from './hydraulic-lines.ts';
import { instant, instantSize } from './instant.ts';
import { LimitDriver } from './limit-driver.ts';
import { peakAt } from './peak-at.ts';
import { place } from './state-places.ts';
import { WheelFigures } from './wheel-figures.ts';
import { figure, wheelStride } from './wheel-places.ts';

// Bound here once: a name of another module is looked up at every use.
const { pitch, pitchRate, master, foot: footAt, wheel: wheelAt, slip: slipAt, pressure: pressureAt } = place;
const { loadShare, radius, perInertia, perRelaxation, gain, pushOut, engineDrag, quickness } = figure;
const { friction, frictionRate, mode, buildRate, load, peak, force, torque } = figure;
const { dump, hold, build } = valve;
const stride = wheelStride;

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
  /** s, when the friction of the pads was looked up. */
  frictionTime = 0;
  /** What holds for the whole car where the slopes were last taken; see `instant`. */
  readonly now = new Float64Array(instantSize);
  /** Whether a driver has cut back what the foot asked. */
  driverHolds = false;

  /** m/s² of the center of gravity where the slopes were last taken, positive while slowing. */
  get deceleration(): number {
    return this.now[instant.deceleration]!;
  }

  /** N m by which unequal forces turn the car, nose to the left positive. */
  yawMoment(): number {
    const { wheels } = this;
    const front = wheels.frontHalfTrack * (wheels.read(0, force) - wheels.read(1, force));
    return front + wheels.rearHalfTrack * (wheels.read(2, force) - wheels.read(3, force));
  }

  /** m/s of the wheels. */
  wheelSpeed(state: Float64Array): number {
    return state[0]! - this.body.pitchCarry * state[pitchRate]!;
  }

  /**
   * Writes what each figure of `state` gains a second, at the time in `now`, into `slopes`.
   *
   * One long function, and the only one: numbers handed between functions that are too long to be merged are put into
   * boxes, which costs more than the physics.
   */
  slopes(state: Float64Array, slopes: Float64Array): void {
    const { body, now, lines } = this;
    const { table, frontCurve, rearCurve } = this.wheels;
    const time = now[instant.time]!;

    // The car: speed of its wheels, loads of its axles.
    const pitching = state[pitchRate]!;
    const speed = state[0]! - body.pitchCarry * pitching;
    const squared = speed * speed;
    const size = speed < 0 ? -speed : speed;
    const moved = body.transfer * (state[pitch]! + body.pitchLead * pitching);
    let front = body.frontStill - body.frontLift * squared + moved;
    let rear = body.rearStill - body.rearLift * squared - moved;
    if (rear < 0) {
      front += rear;
      rear = 0;
    } else if (front < 0) {
      rear += front;
      front = 0;
    }
    for (let wheel = 0, row = 0; wheel < 4; wheel += 1, row += stride) {
      const carried = (wheel < 2 ? front : rear) * table[row + loadShare]!;
      table[row + load] = carried;
      table[row + peak] = peakAt(table, wheel, carried);
    }

    // The lines: what the foot asks, what the master cylinder has.
    this.#ask(state);
    const asked = now[instant.asked]!;
    const follows = lines.boosterQuickness > 0;
    slopes[master] = follows ? (asked - state[master]!) * lines.boosterQuickness : 0;
    const frontLine = follows ? state[master]! : asked;
    const rearLine = lines.rear.rearAt(frontLine);

    // The wheels: force, torque, turning, slip and pressure of each.
    const since = time - this.frictionTime;
    let tires = 0;
    for (let wheel = 0, row = 0; wheel < 4; wheel += 1, row += stride) {
      const slip = state[slipAt + wheel]!;
      const turning = state[wheelAt + wheel]!;
      const pressure = state[pressureAt + wheel]!;
      const given = table[row + peak]! * (wheel < 2 ? frontCurve : rearCurve).at(slip);
      const above = pressure - table[row + pushOut]!;
      const rubbing = table[row + friction]! + table[row + frictionRate]! * since;
      const braking = above > 0 ? table[row + gain]! * rubbing * above : 0;
      const arm = table[row + radius]!;
      const net = arm * given - braking - table[row + engineDrag]!;
      slopes[wheelAt + wheel] = turning > 0 || net > 0 ? net * table[row + perInertia]! : 0;
      slopes[slipAt + wheel] = (speed - arm * turning - size * slip) * table[row + perRelaxation]!;
      let rate = ((wheel < 2 ? frontLine : rearLine) - pressure) * table[row + quickness]!;
      const valveMode = table[row + mode]!;
      if (valveMode === hold) rate = 0;
      else if (valveMode === dump) rate = -pressure * lines.dumpQuickness;
      else if (valveMode === build && rate > table[row + buildRate]!) rate = table[row + buildRate]!;
      slopes[pressureAt + wheel] = rate;
      table[row + force] = given;
      table[row + torque] = braking;
      tires += given;
    }

    // The motion: every force along the road slows the car and pitches it.
    const air = body.drag * squared;
    const rolling = speed > 0 ? body.rolling * (front + rear) : 0;
    const along = tires + rolling + air;
    const deceleration = (along + body.climb) * body.perMass;
    now[instant.air] = air;
    now[instant.rolling] = rolling;
    now[instant.deceleration] = deceleration;
    slopes[0] = -deceleration;
    slopes[1] = speed;
    slopes[pitch] = pitching;
    slopes[pitchRate] =
      body.pitchRate *
      (body.pitchRate * (along * body.perMass - state[pitch]!) - 2 * body.pitchDamping * pitching);
    slopes[footAt] = this.foot.seeks ? this.foot.forceRate(time, state[footAt]!, deceleration) : 0;
  }

  /** Pa that the foot asks of the front outlet, into `now`. */
  #ask(state: Float64Array): void {
    const { foot, now } = this;
    const pressing = foot.seeks ? state[footAt]! : foot.forceAt(now[instant.time]!);
    now[instant.asked] = foot.pressureFor(pressing);
    if (this.driver.acts) this.#holdBack(state);
  }

  /** Cuts back what the foot asks to what a driver at the limit would ask. */
  #holdBack(state: Float64Array): void {
    const { driver, wheels, lines, now } = this;
    const { table } = wheels;
    const since = now[instant.time]! - this.frictionTime;
    const slowing = state[pitch]!;
    const asked = now[instant.asked]!;
    let least = asked;
    for (let wheel = 0, row = 0; wheel < 4; wheel += 1, row += stride) {
      const rubbing = table[row + friction]! + table[row + frictionRate]! * since;
      const slip = state[slipAt + wheel]!;
      const allowed = driver.allowed(table, lines.rear, wheel, rubbing, slip, slowing);
      if (allowed >= least) continue;
      least = allowed;
      driver.holdsFront = wheel < 2;
    }
    this.driverHolds = least < asked;
    now[instant.asked] = least;
  }
}
