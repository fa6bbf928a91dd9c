import { instant } from './instant.ts';
import { place } from './state-places.ts';
import type { StopDynamics } from './stop-dynamics.ts';
import { figure, wheelStride } from './wheel-places.ts';

const { radius, engineDrag, force, torque } = figure;

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

/** Places of the powers that are booked. */
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
  /** J of each brake. */
  readonly brakeWork = new Float64Array(4);
  kineticIn = 0;
  left = 0;
  readonly #sums = new Float64Array(power.brakes);
  /** W at the last node and at this one. */
  #before = new Float64Array(powers);
  #now = new Float64Array(powers);

  /** Opens the books at the first touch. */
  open(dynamics: StopDynamics, state: Float64Array): void {
    this.#sums.fill(0);
    this.brakeWork.fill(0);
    this.kineticIn = energyOf(dynamics, state);
    this.left = 0;
  }

  /** Reads the powers at a node, where the slopes have just been taken. */
  read(dynamics: StopDynamics, state: Float64Array, speed: number): void {
    const swapped = this.#before;
    this.#before = this.#now;
    this.#now = swapped;
    const now = swapped;
    const { body } = dynamics;
    const { table } = dynamics.wheels;
    let slipping = 0;
    let engine = 0;
    for (let wheel = 0; wheel < 4; wheel += 1) {
      const turning = state[place.wheel + wheel]!;
      const row = wheelStride * wheel;
      slipping += table[row + force]! * (speed - table[row + radius]! * turning);
      engine += table[row + engineDrag]! * turning;
      now[power.brakes + wheel] = table[row + torque]! * turning;
    }
    now[power.tireSlip] = slipping;
    now[power.driveline] = engine;
    now[power.air] = dynamics.now[instant.air]! * speed;
    now[power.rolling] = dynamics.now[instant.rolling]! * speed;
    now[power.climb] = body.climb * state[place.speed]!;
    now[power.dampers] = body.pitchLoss(state[place.pitchRate]!);
  }

  /** Books the step of `duration`, s, between the last two nodes; adds the brakes' part to `waiting`, J. */
  book(duration: number, waiting: Float64Array): void {
    const half = 0.5 * duration;
    const before = this.#before;
    const now = this.#now;
    for (let i = 0; i < power.brakes; i += 1) this.#sums[i] = this.#sums[i]! + half * (before[i]! + now[i]!);
    for (let wheel = 0; wheel < 4; wheel += 1) {
      const work = half * (before[power.brakes + wheel]! + now[power.brakes + wheel]!);
      this.brakeWork[wheel] = this.brakeWork[wheel]! + work;
      waiting[wheel] = waiting[wheel]! + work;
    }
  }

  /** Closes the books at rest. */
  close(dynamics: StopDynamics, state: Float64Array): void {
    this.left = energyOf(dynamics, state);
  }

  /** The books as they stand, J. */
  ledger(): FullLedger {
    const sums = this.#sums;
    const [frontLeft, frontRight, rearLeft, rearRight] = this.brakeWork;
    return {
      kineticIn: this.kineticIn,
      brakes: frontLeft! + frontRight! + rearLeft! + rearRight!,
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
    sum += (0.5 * turning * turning) / wheels.read(wheel, figure.perInertia);
  }
  return sum;
}
