import { requireRange } from '@standstill/numerics';
import { AntilockController } from './antilock-controller.ts';
import { FullBooks } from './full-ledger.ts';
import type { FullStopInput } from './full-stop-input.ts';
import { loadFullStop } from './load-full-stop.ts';
import { rungeKuttaStep } from './runge-kutta-step.ts';
import { StopDynamics } from './stop-dynamics.ts';
import { StopNotes } from './stop-notes.ts';
import { WheelHeat } from './wheel-heat.ts';

/** Is told of every look of the control, of every locking and of rest. */
export type FullObserver = (march: FullMarch) => void;

/** Steps between two looks of the control, at least. */
const fewestSteps = 3;
/** How long a step may be, over what changes most quickly, 1. */
const longestStep = 1;
/** Looks of the control between two looks at the rotors' heat. */
const looksPerWarming = 6;
/** s after which a car that still moves is taken not to come to rest. */
const mostTime = 600;
/** s and m/s: a car that has lost less than this in that time is taken not to slow. */
const patience = 2;
const leastLoss = 0.02;
/** m/s and rad/s, within which rest and locking are found. */
const restTolerance = 1e-10;
const mostTries = 40;
/** Part of the energy of motion at the start, 1, that a wheel may take or give in one step; more of it halves the step. */
const mostSpin = 2.5e-5;
/** s, a step that is not halved any more. */
const leastStep = 2e-5;
/** Steps between two nodes: more than halving from any step to the least can make. */
const mostParts = 1000;

/**
 * Marches a full stop from the first touch of the pedal to rest in equal steps, in smaller ones where a wheel is quickly
 * slowed or spun up; a step is cut where a wheel locks and where the car comes to rest, so that both are found and not
 * stepped over.
 *
 * Equation: `StopDynamics` by `rungeKuttaStep`, a third of the control's period at a time, or less where something changes quickly.
 * Source: [runge-kutta]
 */
export class FullMarch {
  readonly dynamics = new StopDynamics();
  readonly controller = new AntilockController();
  readonly heat = new WheelHeat();
  readonly books = new FullBooks();
  readonly notes = new StopNotes();
  /** m/s of the wheels. */
  speed = Number.NaN;
  cameToRest = false;
  /** Whether the slopes that were taken last are those where the march stands. */
  #isSettled = false;
  #observer: FullObserver | undefined;
  #period = 0.005;
  #firstLook = Number.NaN;
  #refinement = 1;
  #warmedAt = Number.NaN;
  #stalled = Number.NaN;
  #stalledSpeed = Number.NaN;

  /** s from the first touch. */
  get time(): number {
    return this.dynamics.car.time;
  }

  /** Takes on a stop and stands at its first touch. */
  start(input: FullStopInput, observer?: FullObserver): void {
    requireRange('speed', input.speed, 'm/s', 0.1, 150);
    this.#refinement = requireRange('refinement', input.refinement ?? 1, '', 1, 1000);
    requireRange('refinement over its whole part', this.#refinement % 1, '', 0, 0);
    this.#period = loadFullStop(input, this.dynamics, this.controller, this.heat);
    this.#firstLook =
      this.#period * requireRange('phase of the control', input.controlPhase ?? 1, '', 1e-6, 1);
    this.#observer = observer;
    this.speed = this.dynamics.wheelSpeed();
    this.cameToRest = false;
    this.#warmedAt = 0;
    this.#stalled = 0;
    this.#stalledSpeed = this.speed;
    this.notes.open(input.speed);
    this.#settle();
    this.books.open(this.dynamics);
    observer?.(this);
  }

  /** Marches to rest, or until the car no longer slows. */
  run(): void {
    let look = 0;
    const stepsPerLook = this.#stepsPerLook();
    let steps = Math.ceil((stepsPerLook * this.#firstLook) / this.#period);
    while (!this.cameToRest && this.time < mostTime) {
      const from = this.time;
      const to = this.#firstLook + look * this.#period;
      const count = steps * this.#refinement;
      for (let i = 1; i <= count && !this.cameToRest; i += 1) {
        this.#marchTo(i === count ? to : from + ((to - from) * i) / count);
      }
      steps = stepsPerLook;
      look += 1;
      if (this.cameToRest) break;
      this.#look(look);
      if (this.#nolongerSlows()) break;
    }
    this.#warm();
    this.books.close(this.dynamics);
    this.#observer?.(this);
  }

  /** Steps of a period: so many that the quickest of what changes is followed. */
  #stepsPerLook(): number {
    const quickest = this.dynamics.quickest(this.speed);
    return Math.max(fewestSteps, Math.ceil((this.#period * quickest) / longestStep));
  }

  /** Steps to a time, s, in one step or, where wheels lock on the way, in several. */
  #marchTo(time: number): void {
    const { dynamics } = this;
    const { car } = dynamics;
    for (let part = 0; part < mostParts && car.time < time && !this.cameToRest; part += 1) {
      car.duration = time - car.time;
      this.#try();
      while (car.duration > leastStep && this.#isRough()) {
        car.duration *= 0.5;
        this.#try();
      }
      const whole = car.duration;
      const isLast = car.time + whole >= time;
      const locking = this.#firstToLock();
      if (locking >= 0) this.#cutWhere(locking);
      this.cameToRest = dynamics.triedWheelSpeed() <= restTolerance;
      if (this.cameToRest) this.#cutWhere(-1);
      this.#accept(this.cameToRest ? -1 : locking);
      if (isLast && car.duration === whole && !this.cameToRest) car.time = time;
    }
  }

  #settle(): void {
    this.dynamics.settle();
    this.#isSettled = true;
  }

  /** Tries a step of the duration that is set. */
  #try(): void {
    if (!this.#isSettled) this.#settle();
    this.#isSettled = false;
    rungeKuttaStep(this.dynamics);
  }

  /** Whether a wheel takes or gives so much energy in the tried step that it is to be gone in smaller ones. */
  #isRough(): boolean {
    const { each } = this.dynamics.wheels;
    const most = 2 * mostSpin * this.books.kineticIn;
    for (let at = 0; at < 4; at += 1) {
      const wheel = each[at]!;
      const was = wheel.turning;
      const is = wheel.triedTurning > 0 ? wheel.triedTurning : 0;
      if (Math.abs(is * is - was * was) > most * wheel.perInertia) return true;
    }
    return false;
  }

  /** The wheel that would be turning backwards and was turning forwards most lately; −1 where none. */
  #firstToLock(): number {
    const { each } = this.dynamics.wheels;
    const whole = this.dynamics.car.duration;
    let first = -1;
    let soonest = whole;
    for (let wheel = 0; wheel < 4; wheel += 1) {
      const { turning: was, triedTurning: is } = each[wheel]!;
      if (is >= 0 || was <= 0) continue;
      const when = (whole * was) / (was - is);
      if (first < 0 || when < soonest) {
        first = wheel;
        soonest = when;
      }
    }
    return first;
  }

  /** Cuts the tried step where a wheel (−1: the car) stands still. */
  #cutWhere(wheel: number): void {
    const { car } = this.dynamics;
    let low = 0;
    let lowValue = wheel < 0 ? this.speed : this.dynamics.wheels.each[wheel]!.turning;
    let high = car.duration;
    let highValue = this.#triedRunning(wheel);
    let side = 0;
    for (let i = 0; i < mostTries && Math.abs(highValue) > restTolerance; i += 1) {
      const middle = (low * highValue - high * lowValue) / (highValue - lowValue);
      car.duration = middle;
      this.#try();
      const value = this.#triedRunning(wheel);
      if (Math.abs(value) <= restTolerance) return;
      if (value > 0) {
        low = middle;
        lowValue = value;
        if (side === 1) highValue *= 0.5;
        side = 1;
      } else {
        high = middle;
        highValue = value;
        if (side === -1) lowValue *= 0.5;
        side = -1;
      }
    }
  }

  /** rad/s of a wheel, or m/s of the car for −1, at the end of the tried step. */
  #triedRunning(wheel: number): number {
    return wheel < 0 ? this.dynamics.triedWheelSpeed() : this.dynamics.wheels.each[wheel]!.triedTurning;
  }

  /** Takes the tried step; a wheel that `locks` stands still from now on. */
  #accept(locks: number): void {
    const { dynamics } = this;
    const { car } = dynamics;
    const { each } = dynamics.wheels;
    const sixth = car.duration / 6;
    car.acceptStep();
    for (let at = 0; at < 4; at += 1) each[at]!.acceptStep(sixth, at === locks);
    this.#settle();
    this.speed = car.distanceRate;
    this.books.book(dynamics);
    this.notes.note(this);
    if (locks >= 0) this.#observer?.(this);
  }

  /** Lets the control look at the wheels, and at times the rotors take their heat. */
  #look(look: number): void {
    const { dynamics, controller } = this;
    const period = look === 1 ? this.#firstLook : this.#period;
    const hasSet = controller.look(dynamics, this.speed, period);
    const warms = look % looksPerWarming === 0;
    if (warms) this.#warm();
    if (hasSet || warms) this.#settle();
    this.#observer?.(this);
  }

  #warm(): void {
    const span = this.time - this.#warmedAt;
    if (span <= 0) return;
    this.heat.look(this.dynamics, this.time, span);
    this.#warmedAt = this.time;
  }

  #nolongerSlows(): boolean {
    if (this.time - this.#stalled < patience + this.dynamics.foot.settledAfter) return false;
    if (this.#stalledSpeed - this.speed < leastLoss) return true;
    this.#stalled = this.time - this.dynamics.foot.settledAfter;
    this.#stalledSpeed = this.speed;
    return false;
  }
}
