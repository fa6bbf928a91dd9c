import { BodyFigures } from './body-figures.ts';
import { CarMotion } from './car-motion.ts';
import { FootCommand } from './foot-command.ts';
import { HydraulicLines } from './hydraulic-lines.ts';
import { LimitDriver } from './limit-driver.ts';
import { WheelFigures } from './wheel-figures.ts';

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
  readonly car = new CarMotion();
  readonly wheels = new WheelFigures();
  readonly lines = new HydraulicLines();
  readonly foot = new FootCommand();
  readonly driver = new LimitDriver();
  /** s, when the friction of the pads was looked up. */
  frictionTime = 0;
  /** Whether a driver has cut back what the foot asked. */
  driverHolds = false;

  /** m/s² of the center of gravity where the slopes were last taken, positive while slowing. */
  get deceleration(): number {
    return this.car.deceleration;
  }

  /** N m by which unequal forces turn the car, nose to the left positive. */
  yawMoment(): number {
    const { wheels } = this;
    const { each } = wheels;
    const front = wheels.frontHalfTrack * (each[0].force - each[1].force);
    return front + wheels.rearHalfTrack * (each[2].force - each[3].force);
  }

  /** N on one wheel at the last node. */
  loadOn(wheel: number): number {
    const { body, car } = this;
    const speed = this.wheelSpeed();
    const moved = body.transfer * (car.pitch + body.pitchLead * car.pitching);
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

  /** m/s of the wheels at the last node. */
  wheelSpeed(): number {
    return this.car.speed - this.body.pitchCarry * this.car.pitching;
  }

  /** m/s of the wheels at the end of the step that was last tried. */
  triedWheelSpeed(): number {
    return this.car.triedSpeed - this.body.pitchCarry * this.car.triedPitching;
  }

  /** Takes the slopes at the last node. */
  settle(): void {
    this.car.ahead = 0;
    this.car.weight = 0;
    this.slopes();
  }

  /**
   * Takes the slopes at a stage of a step, `ahead` of the last node along the slopes that were taken last, and adds them to
   * the step's sums by the stage's `weight`; see `CarMotion`.
   *
   * One long function: numbers handed between functions that are not merged are put into boxes, which costs more than the
   * physics, and only so much is merged into one.
   */
  slopes(): void {
    const { body, car, lines, wheels, foot } = this;
    const { each } = wheels;
    const { ahead, weight } = car;
    const time = car.time + ahead;

    // The car: speed of its wheels, loads of its axles.
    const pitch = car.pitch + ahead * car.pitchRate;
    const pitching = car.pitching + ahead * car.pitchingRate;
    const speed = car.speed + ahead * car.speedRate - body.pitchCarry * pitching;
    const squared = speed * speed;
    const moved = body.transfer * (pitch + body.pitchLead * pitching);
    let front = body.frontStill - body.frontLift * squared + moved;
    let rear = body.rearStill - body.rearLift * squared - moved;
    if (rear < 0) {
      front += rear;
      rear = 0;
    } else if (front < 0) {
      rear += front;
      front = 0;
    }
    if (wheels.areWet) wheels.meetWater(speed);

    // The lines: what the foot asks, what the master cylinder has.
    if (time >= foot.heldFrom) car.asked = foot.heldPressure;
    else this.#ask(time);
    if (this.driver.acts) this.#holdBack(time, speed, pitch, front, rear);
    const { asked } = car;
    const { boosterQuickness } = lines;
    const master = car.master + ahead * car.masterRate;
    const masterRate = (asked - master) * boosterQuickness;
    const frontLine = boosterQuickness > 0 ? master : asked;
    const rearLine = lines.rear.rearAt(frontLine);

    // The wheels, an axle at a time: one call alone, so that it is merged.
    const since = time - this.frictionTime;
    let load = front;
    let line = frontLine;
    let tires = 0;
    for (let at = 0; at < 4; at += 1) {
      if (at === 2) {
        load = rear;
        line = rearLine;
      }
      tires += each[at]!.roll(ahead, weight, speed, load, line, since);
    }

    // The motion: every force along the road slows the car and pitches it.
    const air = body.drag * squared;
    const rolling = body.rolling * (front + rear);
    const along = tires + rolling + air;
    const deceleration = (along + body.climb) * body.perMass;
    const pitchingRate =
      body.pitchRate * (body.pitchRate * (along * body.perMass - pitch) - 2 * body.pitchDamping * pitching);
    car.air = air;
    car.rolling = rolling;
    car.deceleration = deceleration;
    car.speedRate = -deceleration;
    car.distanceRate = speed;
    car.pitchRate = pitching;
    car.pitchingRate = pitchingRate;
    car.masterRate = masterRate;
    car.speedSum -= weight * deceleration;
    car.distanceSum += weight * speed;
    car.pitchSum += weight * pitching;
    car.pitchingSum += weight * pitchingRate;
    car.masterSum += weight * masterRate;
    if (foot.seeks) this.#seek(time);
  }

  /** Sets what the foot asks at a time, s. */
  #ask(time: number): void {
    const { foot, car } = this;
    const force = foot.seeks ? car.foot + car.ahead * car.footRate : foot.forceAt(time);
    car.asked = foot.pressureFor(force);
  }

  /** Lets a seeking foot press more or less, at a time, s. */
  #seek(time: number): void {
    const { foot, car } = this;
    car.footRate = foot.forceRate(time, car.foot + car.ahead * car.footRate, car.deceleration);
    car.footSum += car.weight * car.footRate;
  }

  /** Cuts back what the foot asks to what a driver at the limit would ask, at s, m/s, m/s² and with N on each axle. */
  #holdBack(time: number, speed: number, slowing: number, front: number, rear: number): void {
    const { driver, wheels, lines, car } = this;
    const since = time - this.frictionTime;
    const { asked, ahead } = car;
    let least = asked;
    for (let at = 0; at < 4; at += 1) {
      const wheel = wheels.each[at]!;
      const isFront = at < 2;
      const friction = wheel.friction + wheel.frictionRate * since;
      const peak = wheels.peakOf(at, (isFront ? front : rear) * wheel.loadShare, Math.abs(speed));
      const slip = wheel.slip + ahead * wheel.slipRate;
      const allowed = driver.allowed(wheel, isFront, lines.rear, peak, friction, slip, slowing);
      if (allowed >= least) continue;
      least = allowed;
      driver.holdsFront = isFront;
    }
    this.driverHolds = least < asked;
    car.asked = least;
  }
}
