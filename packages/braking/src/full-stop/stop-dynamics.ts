import { BodyFigures } from './body-figures.ts';
import { FootCommand } from './foot-command.ts';
import { HydraulicLines } from './hydraulic-lines.ts';
import { instant, instantSize } from './instant.ts';
import { LimitDriver } from './limit-driver.ts';
import { peakAt } from './peak-at.ts';
import { place } from './state-places.ts';
import { WheelFigures } from './wheel-figures.ts';

// Bound here once: a name of another module is looked up at every use.
const { pitch, pitchRate, master, foot: footAt, wheel: wheelAt, slip: slipAt, pressure: pressureAt } = place;
const {
  time: timeAt,
  asked: askedAt,
  air: airAt,
  rolling: rollingAt,
  deceleration: decelerationAt,
} = instant;

/**
 * How the state of a full stop changes: the right-hand side of its differential equations, and the forces behind it.
 *
 * Equation: m v' = −(Σ F + F_air + F_roll) − m g sin θ; J ω' = r F − T − T_engine; σ κ' = (u − r ω) − u κ with u the speed
 * of the wheels; F = F_peak(F_z, u) y(κ); T = 2 μ (p − p_0) A r_e η; pitch by `BodyFigures`; pressures by `HydraulicLines`.
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
    const { each } = wheels;
    const front = wheels.frontHalfTrack * (each[0].force - each[1].force);
    return front + wheels.rearHalfTrack * (each[2].force - each[3].force);
  }

  /** N on one wheel in a state. */
  loadOn(wheel: number, state: Float64Array): number {
    const { body } = this;
    const speed = this.wheelSpeed(state);
    const moved = body.transfer * (state[pitch]! + body.pitchLead * state[pitchRate]!);
    const front = body.frontStill - body.frontLift * speed * speed + moved;
    const rear = body.rearStill - body.rearLift * speed * speed - moved;
    const whole = front + rear;
    const carried = wheel < 2 ? Math.min(front, whole) : Math.min(rear, whole);
    return Math.max(0, carried) * this.wheels.each[wheel]!.loadShare;
  }

  /**
   * 1/s, the quickest that anything here changes in a stop from a speed, m/s: a wheel swinging on its tire at rest, a tire
   * following its slip, a caliper following its line. A step is to be no longer than one over it.
   */
  quickest(speed: number): number {
    const { body, wheels } = this;
    let quickest = 0;
    for (let at = 0; at < 4; at += 1) {
      const wheel = wheels.each[at]!;
      const load = (body.frontStill + body.rearStill) * wheel.loadShare;
      const stiffness = wheels.peakOf(at, load, 0) * wheel.curve.stiffness * wheel.perRelaxation;
      const swing = wheel.radius * Math.sqrt(stiffness * wheel.perInertia);
      quickest = Math.max(quickest, swing, speed * wheel.perRelaxation, wheel.quickness);
    }
    return quickest;
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
    const { each } = this.wheels;
    const time = now[timeAt]!;

    // The car: speed of its wheels, loads of its axles.
    const pitching = state[pitchRate]!;
    const speed = state[0]! - body.pitchCarry * pitching;
    const squared = speed * speed;
    const size = Math.abs(speed);
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

    // The water, where there is any.
    const { areWet, frontWater, rearWater } = this.wheels;
    const frontGrip = areWet ? frontWater.factorAt(size) : 1;
    const rearGrip = areWet ? rearWater.factorAt(size) : 1;

    // The lines: what the foot asks, what the master cylinder has.
    const { foot } = this;
    const pressing = foot.seeks ? state[footAt]! : foot.forceAt(time);
    now[askedAt] = foot.pressureFor(pressing);
    if (this.driver.acts) this.#holdBack(state, speed, front, rear);
    const asked = now[askedAt]!;
    const follows = lines.boosterQuickness > 0;
    slopes[master] = follows ? (asked - state[master]!) * lines.boosterQuickness : 0;
    const frontLine = follows ? state[master]! : asked;
    const rearLine = lines.rear.rearAt(frontLine);

    // The wheels: force, torque, turning, slip and pressure of each.
    const since = time - this.frictionTime;
    let tires = 0;
    for (let at = 0; at < 4; at += 1) {
      const wheel = each[at]!;
      const isFront = at < 2;
      const slip = state[slipAt + at]!;
      const turning = state[wheelAt + at]!;
      const pressure = state[pressureAt + at]!;
      const { radius } = wheel;
      const peak =
        peakAt(wheel, (isFront ? front : rear) * wheel.loadShare) * (isFront ? frontGrip : rearGrip);
      const force = peak * wheel.curve.at(slip);
      const above = pressure - wheel.pushOut;
      const friction = wheel.friction + wheel.frictionRate * since;
      const torque = above > 0 ? wheel.gain * friction * above : 0;
      const net = radius * force - torque - wheel.engineDrag;
      const rate = (isFront ? frontLine : rearLine) * wheel.fromLine - pressure * wheel.fromOwn;
      slopes[wheelAt + at] = turning > 0 || net > 0 ? net * wheel.perInertia : 0;
      slopes[slipAt + at] = (speed - radius * turning - size * slip) * wheel.perRelaxation;
      const { mostRate } = wheel;
      slopes[pressureAt + at] = rate < mostRate ? rate : mostRate;
      wheel.force = force;
      wheel.torque = torque;
      tires += force;
    }

    // The motion: every force along the road slows the car and pitches it.
    const air = body.drag * squared;
    const rolling = body.rolling * (front + rear);
    const along = tires + rolling + air;
    const deceleration = (along + body.climb) * body.perMass;
    now[airAt] = air;
    now[rollingAt] = rolling;
    now[decelerationAt] = deceleration;
    slopes[0] = -deceleration;
    slopes[1] = speed;
    slopes[pitch] = pitching;
    slopes[pitchRate] =
      body.pitchRate *
      (body.pitchRate * (along * body.perMass - state[pitch]!) - 2 * body.pitchDamping * pitching);
    slopes[footAt] = foot.seeks ? foot.forceRate(time, state[footAt]!, deceleration) : 0;
  }

  /** Cuts back what the foot asks to what a driver at the limit would ask, at m/s and with N on each axle. */
  #holdBack(state: Float64Array, speed: number, front: number, rear: number): void {
    const { driver, wheels, lines, now } = this;
    const since = now[timeAt]! - this.frictionTime;
    const slowing = state[pitch]!;
    const asked = now[askedAt]!;
    let least = asked;
    for (let at = 0; at < 4; at += 1) {
      const wheel = wheels.each[at]!;
      const isFront = at < 2;
      const friction = wheel.friction + wheel.frictionRate * since;
      const peak = wheels.peakOf(at, (isFront ? front : rear) * wheel.loadShare, Math.abs(speed));
      const slip = state[slipAt + at]!;
      const allowed = driver.allowed(wheel, isFront, lines.rear, peak, friction, slip, slowing);
      if (allowed >= least) continue;
      least = allowed;
      driver.holdsFront = isFront;
    }
    this.driverHolds = least < asked;
    now[askedAt] = least;
  }
}
