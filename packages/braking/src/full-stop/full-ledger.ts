import type { StopDynamics } from './stop-dynamics.ts';
import type { Wheel } from './wheel.ts';

/** Where the energy of motion went in a full stop, J. */
export interface FullLedger {
  /** Car, turning wheels and driveline at the first touch. */
  readonly kineticIn: number;
  /** All four brakes: rotors and pads. */
  readonly brakes: number;
  /** All four tires, by slip or slide. */
  readonly tireSlip: number;
  readonly airDrag: number;
  readonly rolling: number;
  /** Engine drag at the driven wheels. */
  readonly driveline: number;
  /** Positive uphill, negative downhill. */
  readonly climb: number;
  /** Heat in the body's dampers by its pitching. */
  readonly dampers: number;
  /** What is left at rest: the body still pitched and pitching, wheels still turning. */
  readonly left: number;
}

/** One power summed over time. */
class Account {
  /** J. */
  sum = Number.NaN;
  /** W at the last node. */
  #last = Number.NaN;

  /** Adds the work of a step, half of whose duration, s, is `half`, and at whose end the power is `watts`. */
  add(watts: number, half: number): void {
    this.sum += half * (this.#last + watts);
    this.#last = watts;
  }
}

/**
 * The books of a full stop: the power of every force at the ends of a step, summed by the trapezoid rule and so by another
 * way than the motion, whose own scheme is Runge and Kutta's. What is put in and what is found again differ by what the
 * motion gets wrong.
 *
 * Equation: E = ∫ P dt by h (P_0 + P_1) / 2.
 * Source: [geometry]
 */
export class FullBooks {
  kineticIn = 0;
  left = 0;
  readonly #tireSlip = new Account();
  readonly #air = new Account();
  readonly #rolling = new Account();
  readonly #driveline = new Account();
  readonly #climb = new Account();
  readonly #dampers = new Account();
  readonly #accounts = [
    this.#tireSlip,
    this.#air,
    this.#rolling,
    this.#driveline,
    this.#climb,
    this.#dampers,
  ];
  #wheels: readonly Wheel[] = [];

  /** Opens the books at the first touch, where the slopes have just been taken. */
  open(dynamics: StopDynamics): void {
    this.kineticIn = energyOf(dynamics);
    this.left = 0;
    this.#wheels = dynamics.wheels.each;
    this.book(dynamics);
    for (const account of this.#accounts) account.sum = 0;
    for (const wheel of this.#wheels) wheel.brakeWork = 0;
  }

  /** Books the step that ends at a node where the slopes have just been taken. */
  book({ body, car, wheels }: StopDynamics): void {
    const { each } = wheels;
    const half = 0.5 * car.duration;
    const speed = car.distanceRate;
    let slipping = 0;
    let engine = 0;
    for (let at = 0; at < 4; at += 1) {
      const wheel = each[at]!;
      const { turning } = wheel;
      slipping += wheel.force * (speed - wheel.radius * turning);
      engine += wheel.engineDrag * turning;
      const power = wheel.torque * turning;
      wheel.brakeWork += half * (wheel.wattsOfBrake + power);
      wheel.wattsOfBrake = power;
    }
    this.#tireSlip.add(slipping, half);
    this.#driveline.add(engine, half);
    this.#air.add(car.air * speed, half);
    this.#rolling.add(car.rolling * speed, half);
    this.#climb.add(body.climb * car.speed, half);
    this.#dampers.add(body.pitchLoss(car.pitching), half);
  }

  /** Closes the books at rest. */
  close(dynamics: StopDynamics): void {
    this.left = energyOf(dynamics);
  }

  /** The books as they stand, J. */
  ledger(): FullLedger {
    return {
      kineticIn: this.kineticIn,
      brakes: this.#wheels.reduce((sum, wheel) => sum + wheel.brakeWork, 0),
      tireSlip: this.#tireSlip.sum,
      airDrag: this.#air.sum,
      rolling: this.#rolling.sum,
      driveline: this.#driveline.sum,
      climb: this.#climb.sum,
      dampers: this.#dampers.sum,
      left: this.left,
    };
  }
}

/** J of motion and of the pitched body. */
function energyOf({ body, car, wheels }: StopDynamics): number {
  const { speed, pitch, pitching } = car;
  let sum = 0.5 * body.mass * speed * speed + body.pitchEnergy(pitch, pitching);
  for (const { turning, perInertia } of wheels.each) sum += (0.5 * turning * turning) / perInertia;
  return sum;
}
