import type { BrakedCar } from './braked-car.ts';
import type { MotionStep } from './motion-step.ts';
import { clearLedger, emptyLedger, type StopLedger } from './stop-ledger.ts';
import type { StopLimit } from './stop-limit.ts';

/** s over which the energy of a wheel that locks reaches its rotor (assumed). */
const lockingTime = 0.1;

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
  /** J that the brakes took and their rotors have not been given. */
  frontOwed = 0;
  rearOwed = 0;
  /** N at the last node, by what the forces do. */
  frontHeat = 0;
  rearHeat = 0;
  #slip = 0;
  #airDrag = 0;
  #rolling = 0;

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
    this.frontOwed = 0;
    this.rearOwed = 0;
  }

  /** Reads the forces at a node. */
  readNode({ front, rear, body }: BrakedCar, deceleration: number): void {
    const frontSlip = front.slipForce();
    const rearSlip = rear.slipForce();
    this.frontHeat = front.stoppingForce(deceleration) - frontSlip;
    this.rearHeat = rear.stoppingForce(deceleration) - rearSlip;
    this.#slip = frontSlip + rearSlip;
    this.#airDrag = body.airDrag;
    this.#rolling = body.rolling;
    this.peakDeceleration = Math.max(this.peakDeceleration, deceleration);
  }

  /** Books a step; the car is at its end. */
  book(step: MotionStep, car: BrakedCar): void {
    const { ledger } = this;
    const { frontHeat, rearHeat } = this;
    const slip = this.#slip;
    const airDrag = this.#airDrag;
    const rolling = this.#rolling;
    this.readNode(car, step.endDeceleration);
    this.limitedDistances[car.keeper.limit()] += step.distance;
    ledger.tireSlip += step.work(slip, this.#slip);
    ledger.airDrag += step.work(airDrag, this.#airDrag);
    ledger.rolling += step.work(rolling, this.#rolling);
    ledger.climb += step.distance * car.body.climb;
    this.bookBrakes(car, step.work(frontHeat, this.frontHeat), step.work(rearHeat, this.rearHeat));
    this.frontPeakTemperature = Math.max(this.frontPeakTemperature, car.front.heat.interfaceTemperature);
    this.rearPeakTemperature = Math.max(this.rearPeakTemperature, car.rear.heat.interfaceTemperature);
  }

  /** Books J that the brakes of each axle took; their rotors are owed them. */
  bookBrakes({ front, rear }: BrakedCar, frontEnergy: number, rearEnergy: number): void {
    const frontRotors = front.rotorShare * frontEnergy;
    const rearRotors = rear.rotorShare * rearEnergy;
    this.ledger.frontRotors += frontRotors;
    this.ledger.rearRotors += rearRotors;
    this.ledger.pads += frontEnergy - frontRotors + rearEnergy - rearRotors;
    this.frontOwed += frontEnergy;
    this.rearOwed += rearEnergy;
  }

  /** Gives both axles' rotors the heat of a step and some of what they are owed. */
  warmRotors(step: MotionStep, { front, rear }: BrakedCar): void {
    const released = step.endSpeed > 0 ? Math.min(1, step.duration / lockingTime) : 1;
    const { duration, startSpeed, endSpeed, endDeceleration } = step;
    const frontEnd = front.stoppingForce(endDeceleration) - front.slipForce();
    const rearEnd = rear.stoppingForce(endDeceleration) - rear.slipForce();
    const frontGiven = step.work(this.frontHeat, frontEnd) + released * this.frontOwed;
    const rearGiven = step.work(this.rearHeat, rearEnd) + released * this.rearOwed;
    front.warm(duration, frontGiven / duration, 0.5 * (frontEnd * endSpeed - this.frontHeat * startSpeed));
    rear.warm(duration, rearGiven / duration, 0.5 * (rearEnd * endSpeed - this.rearHeat * startSpeed));
    this.frontOwed -= frontGiven;
    this.rearOwed -= rearGiven;
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
