import { instant } from './instant.ts';
import { place } from './state-places.ts';
import type { StopDynamics } from './stop-dynamics.ts';

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

/** Places of the powers that are booked; the brakes' four stand last. */
const power = { tireSlip: 0, air: 1, rolling: 2, driveline: 3, climb: 4, dampers: 5, brakes: 6 } as const;
const powers = 10;

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
  readonly #sums = new Float64Array(powers);
  /** W at the last node. */
  readonly #last = new Float64Array(powers);

  /** Opens the books at the first touch, where the slopes have just been taken. */
  open(dynamics: StopDynamics, state: Float64Array, speed: number): void {
    this.kineticIn = energyOf(dynamics, state);
    this.left = 0;
    this.book(dynamics, state, speed, 0);
    this.#sums.fill(0);
  }

  /** Books the step of `duration`, s, that ends at a node where the slopes have just been taken. */
  book(dynamics: StopDynamics, state: Float64Array, speed: number, duration: number): void {
    const { body, now } = dynamics;
    const { each } = dynamics.wheels;
    const half = 0.5 * duration;
    let slipping = 0;
    let engine = 0;
    for (let at = 0; at < 4; at += 1) {
      const wheel = each[at]!;
      const turning = state[place.wheel + at]!;
      slipping += wheel.force * (speed - wheel.radius * turning);
      engine += wheel.engineDrag * turning;
      this.#add(power.brakes + at, wheel.torque * turning, half);
    }
    this.#add(power.tireSlip, slipping, half);
    this.#add(power.driveline, engine, half);
    this.#add(power.air, now[instant.air]! * speed, half);
    this.#add(power.rolling, now[instant.rolling]! * speed, half);
    this.#add(power.climb, body.climb * state[place.speed]!, half);
    this.#add(power.dampers, body.pitchLoss(state[place.pitchRate]!), half);
  }

  #add(at: number, watts: number, half: number): void {
    this.#sums[at] = this.#sums[at]! + half * (this.#last[at]! + watts);
    this.#last[at] = watts;
  }

  /** J that one brake has made since the books were opened. */
  brakeHeat(wheel: number): number {
    return this.#sums[power.brakes + wheel]!;
  }

  /** Closes the books at rest. */
  close(dynamics: StopDynamics, state: Float64Array): void {
    this.left = energyOf(dynamics, state);
  }

  /** The books as they stand, J. */
  ledger(): FullLedger {
    const sums = this.#sums;
    let brakes = 0;
    for (let wheel = 0; wheel < 4; wheel += 1) brakes += this.brakeHeat(wheel);
    return {
      kineticIn: this.kineticIn,
      brakes,
      tireSlip: sums[power.tireSlip]!,
      airDrag: sums[power.air]!,
      rolling: sums[power.rolling]!,
      driveline: sums[power.driveline]!,
      climb: sums[power.climb]!,
      dampers: sums[power.dampers]!,
      left: this.left,
    };
  }
}

/** J of motion and of the pitched body. */
function energyOf({ body, wheels }: StopDynamics, state: Float64Array): number {
  const speed = state[place.speed]!;
  let sum = 0.5 * body.mass * speed * speed + body.pitchEnergy(state[place.pitch]!, state[place.pitchRate]!);
  for (let wheel = 0; wheel < 4; wheel += 1) {
    const turning = state[place.wheel + wheel]!;
    sum += (0.5 * turning * turning) / wheels.each[wheel]!.perInertia;
  }
  return sum;
}
