import type { StopLimit } from '../stop/stop-limit.ts';
import type { FullMarch } from './full-march.ts';

/** The limits in the order of their places. */
const stopLimits: readonly StopLimit[] = ['brake torque', 'tire grip', 'front lock', 'rear lock'];

/** What is written down on the way of a full stop. */
export class StopNotes {
  /** m/s², greatest. */
  peakDeceleration = Number.NaN;
  /** m, where the speed fell through 0.8 and 0.1 of the speed at the first touch. */
  distanceAtHigh = Number.NaN;
  distanceAtLow = Number.NaN;
  /** m driven under each limit, in the order of `stopLimits`. */
  readonly limited = new Float64Array(stopLimits.length);
  /** m on which any wheel of the axle stood still. */
  frontSlide = Number.NaN;
  rearSlide = Number.NaN;
  /** m/s and m at the last node. */
  #speed = Number.NaN;
  #distance = Number.NaN;
  #high = Number.NaN;
  #low = Number.NaN;
  /** What holds the stop back with nobody at work: the brakes, or the axle that locked first. */
  #limit = 0;

  /** Opens the notes for a stop from a speed, m/s. */
  open(speed: number): void {
    this.peakDeceleration = 0;
    this.#speed = speed;
    this.#distance = 0;
    this.#high = 0.8 * speed;
    this.#low = 0.1 * speed;
    this.distanceAtHigh = 0;
    this.distanceAtLow = 0;
    this.frontSlide = 0;
    this.rearSlide = 0;
    this.#limit = 0;
    this.limited.fill(0);
  }

  /** Notes the step that has just been taken. */
  note({ dynamics, controller, speed }: FullMarch): void {
    const before = this.#speed;
    const from = this.#distance;
    const { duration } = dynamics.car;
    if (dynamics.deceleration > this.peakDeceleration) this.peakDeceleration = dynamics.deceleration;
    const { each } = dynamics.wheels;
    const to = dynamics.car.distance;
    if (before > this.#high && speed <= this.#high)
      this.distanceAtHigh = at(this.#high, before, speed, from, duration);
    if (before > this.#low && speed <= this.#low)
      this.distanceAtLow = at(this.#low, before, speed, from, duration);
    const driven = to - from;
    this.#speed = speed;
    this.#distance = to;
    const frontStands = each[0].turning <= 0 || each[1].turning <= 0;
    const rearStands = each[2].turning <= 0 || each[3].turning <= 0;
    if (frontStands) this.frontSlide += driven;
    if (rearStands) this.rearSlide += driven;
    if (this.#limit === 0 && (frontStands || rearStands)) this.#limit = frontStands ? 2 : 3;
    const { driver } = dynamics;
    let limit = this.#limit;
    if (controller.active) limit = 1;
    else if (driver.acts && dynamics.driverHolds) limit = driver.holdsFront ? 2 : 3;
    this.limited[limit] = this.limited[limit]! + driven;
  }

  /** What held back the longest part of the way. */
  limitedBy(): StopLimit {
    let strongest = 0;
    for (let i = 1; i < this.limited.length; i += 1)
      if (this.limited[i]! > this.limited[strongest]!) strongest = i;
    return stopLimits[strongest] ?? 'brake torque';
  }
}

/** m where a speed, m/s, was passed inside a step of steady deceleration. */
function at(gate: number, before: number, after: number, from: number, duration: number): number {
  const share = (before - gate) / (before - after);
  return from + share * duration * 0.5 * (before + gate);
}
