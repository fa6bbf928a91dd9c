import type { BrakedCar } from './braked-car.ts';
import type { MotionStep } from './motion-step.ts';
import { clearLedger, emptyLedger, type StopLedger } from './stop-ledger.ts';
import type { StopLimit } from './stop-limit.ts';

/** s over which the energy of a wheel that locks reaches its rotor (assumed). */
const lockingTime = 0.1;
/** 1: times are compared with this much slack, so that a rounding of one never decides. */
const slightlyLess = 1 - 1e-6;

/**
 * What a march writes down: where the energy went, what held the stop back over which distance, the gates of the mean
 * fully developed deceleration, and the greatest figures. It also keeps the heat that brakes have taken and rotors have
 * not been given yet: that of wheels that have just locked, and what the end of a step corrects.
 *
 * Allocates nothing after it is made.
 * Source: [geometry]
 */
export class StopBooks {
  readonly ledger: StopLedger = emptyLedger();
  /** m, by what held the stop back. */
  readonly limitedDistances: Record<StopLimit, number> = {
    'tire grip': 0,
    'brake torque': 0,
    'front lock': 0,
    'rear lock': 0,
  };
  /** m/s². */
  peakDeceleration = 0;
  /** °C at the rubbing faces. */
  frontPeakTemperature = 0;
  rearPeakTemperature = 0;
  /** m at 0.8 and at 0.1 of the speed at the first touch. */
  distanceAtHigh = 0;
  distanceAtLow = 0;
  /** s since the rotors were last given heat. */
  waitingTime = 0;
  /** N at the last node, by what the forces do. */
  frontHeat = 0;
  rearHeat = 0;
  #slip = 0;
  #airDrag = 0;
  #rolling = 0;
  #engine = 0;
  /** J that the brakes of each axle took; what of it their rotors have not been given: of motion, and of wheels that have just locked. */
  #frontTaken = 0;
  #rearTaken = 0;
  #frontOwed = 0;
  #rearOwed = 0;
  #frontSpill = 0;
  #rearSpill = 0;
  /** J that the brakes of each axle took in the last step. */
  #frontWork = 0;
  #rearWork = 0;
  /** W of the brakes when the rotors were last given heat. */
  #frontPower = 0;
  #rearPower = 0;

  /** Empties the books for a car that stands at the first touch, at a speed, m/s. */
  open({ front, rear, body }: BrakedCar, speed: number): void {
    clearLedger(this.ledger);
    const turning = front.turningEnergy(speed) + rear.turningEnergy(speed);
    this.ledger.kineticIn = 0.5 * body.mass * speed * speed + turning;
    this.limitedDistances['tire grip'] = 0;
    this.limitedDistances['brake torque'] = 0;
    this.limitedDistances['front lock'] = 0;
    this.limitedDistances['rear lock'] = 0;
    this.peakDeceleration = 0;
    this.frontPeakTemperature = front.heat.interfaceTemperature;
    this.rearPeakTemperature = rear.heat.interfaceTemperature;
    this.distanceAtHigh = 0;
    this.distanceAtLow = 0;
    this.#frontTaken = 0;
    this.#rearTaken = 0;
    this.waitingTime = 0;
    this.#frontOwed = 0;
    this.#rearOwed = 0;
    this.#frontSpill = 0;
    this.#rearSpill = 0;
  }

  /** Reads the forces at a node. */
  readNode({ front, rear, body }: BrakedCar, deceleration: number): void {
    front.divide(deceleration);
    rear.divide(deceleration);
    this.frontHeat = front.intoBrakes;
    this.rearHeat = rear.intoBrakes;
    this.#slip = front.intoSlip + rear.intoSlip;
    this.#engine = front.intoEngine + rear.intoEngine;
    this.#airDrag = body.airDrag;
    this.#rolling = body.rolling;
    this.peakDeceleration = Math.max(this.peakDeceleration, deceleration);
  }

  /** Books a step; the car is at its end. */
  book(step: MotionStep, car: BrakedCar): void {
    const { ledger } = this;
    const slip = this.#slip;
    const airDrag = this.#airDrag;
    const rolling = this.#rolling;
    const engine = this.#engine;
    this.bookHeat(step, car);
    this.limitedDistances[car.keeper.limit()] += step.distance;
    ledger.tireSlip += step.work(slip, this.#slip, 0);
    ledger.airDrag += step.work(airDrag, this.#airDrag, 0);
    ledger.rolling += step.work(rolling, this.#rolling, 0);
    ledger.driveline += step.work(engine, this.#engine, 0);
    ledger.climb += step.distance * car.body.climb;
    this.#bookBrakes(car, this.#frontWork, this.#rearWork);
    this.frontPeakTemperature = Math.max(this.frontPeakTemperature, car.front.heat.interfaceTemperature);
    this.rearPeakTemperature = Math.max(this.rearPeakTemperature, car.rear.heat.interfaceTemperature);
  }

  /** Of a step only the heat that its rotors are owed, which the march goes on with; the car is at its end. */
  bookHeat(step: MotionStep, car: BrakedCar): void {
    const { frontHeat, rearHeat } = this;
    this.readNode(car, step.endDeceleration);
    this.#frontWork = step.work(frontHeat, this.frontHeat, car.frontBend);
    this.#rearWork = step.work(rearHeat, this.rearHeat, car.rearBend);
    this.#frontOwed += this.#frontWork;
    this.#rearOwed += this.#rearWork;
  }

  /** Books J of each axle's wheels that have just locked; their rotors get it over the next moments. */
  bookLocking(car: BrakedCar, frontEnergy: number, rearEnergy: number): void {
    this.#bookBrakes(car, frontEnergy, rearEnergy);
    this.#frontSpill += frontEnergy;
    this.#rearSpill += rearEnergy;
  }

  #bookBrakes({ front, rear }: BrakedCar, frontEnergy: number, rearEnergy: number): void {
    this.#frontTaken += frontEnergy;
    this.#rearTaken += rearEnergy;
    const frontRotors = front.rotorShare * this.#frontTaken;
    const rearRotors = rear.rotorShare * this.#rearTaken;
    this.ledger.frontRotors = frontRotors;
    this.ledger.rearRotors = rearRotors;
    this.ledger.pads = this.#frontTaken - frontRotors + this.#rearTaken - rearRotors;
  }

  /**
   * Gives both axles' rotors the heat of a step and what they are owed, or lets a short step wait for the next one.
   * Answers s that they were warmed over; 0 where the step waits.
   */
  warmRotors(step: MotionStep, car: BrakedCar, shortest: number): number {
    const { front, rear } = car;
    const { startSpeed, endSpeed, endDeceleration } = step;
    if (this.waitingTime === 0) {
      this.#frontPower = this.frontHeat * startSpeed;
      this.#rearPower = this.rearHeat * startSpeed;
    }
    this.waitingTime += step.duration;
    if (this.waitingTime < shortest * slightlyLess && endSpeed > 0) return 0;
    const duration = this.waitingTime;
    front.divide(endDeceleration);
    rear.divide(endDeceleration);
    const frontEnd = front.intoBrakes;
    const rearEnd = rear.intoBrakes;
    const frontWork = step.work(this.frontHeat, frontEnd, car.frontBend);
    const rearWork = step.work(this.rearHeat, rearEnd, car.rearBend);
    const share = endSpeed > 0 ? Math.min(1, duration / lockingTime) : 1;
    const frontGiven = frontWork + this.#frontOwed + share * this.#frontSpill;
    const rearGiven = rearWork + this.#rearOwed + share * this.#rearSpill;
    front.warm(duration, frontGiven / duration, 0.5 * (frontEnd * endSpeed - this.#frontPower));
    rear.warm(duration, rearGiven / duration, 0.5 * (rearEnd * endSpeed - this.#rearPower));
    this.#frontOwed = -frontWork;
    this.#rearOwed = -rearWork;
    this.#frontSpill *= 1 - share;
    this.#rearSpill *= 1 - share;
    this.waitingTime = 0;
    return duration;
  }

  /** Notes where the speed passes a gate, for a march that is at `distance`, m, and came in at `entrySpeed`, m/s. */
  noteGates(step: MotionStep, distance: number, entrySpeed: number): void {
    const high = 0.8 * entrySpeed;
    const low = 0.1 * entrySpeed;
    if (step.startSpeed > high && step.endSpeed <= high)
      this.distanceAtHigh = distance + step.distanceTo(high);
    if (step.startSpeed > low && step.endSpeed <= low) this.distanceAtLow = distance + step.distanceTo(low);
  }
}
