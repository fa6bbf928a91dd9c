import { requireRange } from '@standstill/numerics';
import type { AxleHeats } from '../heat/axle-heat.ts';
import { BrakedCar } from './braked-car.ts';
import { loadStop } from './load-stop.ts';
import { MotionStep } from './motion-step.ts';
import { PressureRise } from './pressure-rise.ts';
import { shareUntilLimit, shareUntilNear } from './share-until-limit.ts';
import { StopBooks } from './stop-books.ts';
import type { StopInput } from './stop-input.ts';

/** Is told of every node of a march: the start, the end of every step, rest; twice where a wheel pair lets go. */
export type MarchObserver = (march: StopMarch) => void;

/** Steps over the foot's ramp, over the lag after it, over the speed left, and below the antilock's least speed. */
const rampSteps = 5;
const lagSteps = 4;
const speedSteps = 8;
const lowSpeedSteps = 2;
/** Lags after the ramp that are marched by time, and how much longer the last of those steps is than the first. */
const lagsByTime = 5;
const lagStretch = 5;
/** m/s, below which build-up is so much of the stop that its steps are made shorter, and by how much at most. */
const briskSpeed = 20;
const mostSlowness = 4;
/** s from node to node at most, about: over the ramp, and when marching by speed. */
const longestRampStep = 0.04;
const longestStep = 0.35;
/** s, the same early in the stop, and how much longer per s: the faces warm up fast at first. */
const earlyStep = 0.2;
const stepGrowth = 0.1;
/** s, the same where all of the pressure is there at the first touch. */
const firstStep = 0.04;
const firstGrowth = 0.5;
/** s, a span that is not worth marching by time; what a rounding leaves of one is shorter still. */
const shortestSpan = 1e-6;
/** s over which the rotors are warmed at once at least; shorter steps wait for each other. */
const shortestWarming = 0.03;
/** m/s², under which speed is a poor guide and time a better one: at the start of a step, and at its end. */
const gentleDeceleration = 0.05;
const leastDeceleration = 0.01;
/** m/s: so slow a car that slows at all is brought to rest by speed. */
const nearlyRest = 0.05;
/** s after which a car that still moves is taken not to come to rest. */
const mostTime = 600;
/** 1: counts are rounded up with this much slack, so that a rounding of an input never adds a step. */
const slightlyLess = 1 - 1e-6;
/** Relative change of pad friction that makes the end of a step worth solving again. */
const smallFriction = 3e-4;
/** Share of the peak, 1, within which a wheel pair is taken to be at it, and within which that moment is sought. */
const smallExcess = 1e-4;
const closeExcess = 1e-4;
/** Share of the peak, 1, below it where steps are short, lest pads that warm up take wheels past it unseen. */
const nearExcess = 0.01;
/** Tries to come that close, and the share of a step, 1, that is not worth one. */
const mostLooks = 4;
const leastShare = 1e-6;
/** N per kg of car: the same where there is hardly any peak. */
const leastExcess = 1e-6;
/** Switches of a wheel pair in one stop whose moment is sought; later ones happen at the end of their step. */
const mostSwitches = 24;

/**
 * Marches a quick stop from the first touch of the pedal to rest: by time while pressure builds up, then by speed, so
 * that rest is a node and not stepped over. The moment in which a wheel pair lets go, or is caught again, is sought and made
 * a node; near it steps are short. So is the speed at which the grip on water bends.
 *
 * Equation: v' = −a, s' = v, each step by `MotionStep` (second order), with the pressure's bend within the step; energies
 * ∫ F v dt of every force by the same curves, so that they add up to what the motion loses.
 * Assumes: as `quickStop`.
 *
 * Allocates nothing after it is made, but for what the set-up's own functions do in `start`.
 * Source: [gillespie], [limpert]
 */
export class StopMarch {
  readonly car: BrakedCar;
  readonly books = new StopBooks();
  readonly rise = new PressureRise();
  /** s, m/s, m and m/s² at the present node. */
  time = 0;
  speed = 0;
  distance = 0;
  deceleration = 0;
  cameToRest = true;

  readonly #step = new MotionStep();
  #observer: MarchObserver | undefined;
  #wantsBooks = true;
  #entrySpeed = 0;
  #antilockFloor = 0;
  #refinement = 1;
  /** Whether the step in hand is of given time, or of given loss of speed. */
  #byTime = true;
  /** What the steps before tell the next: K/s of the faces and K/s² of that, over how many s; m/s³ of the deceleration. */
  #frontRate = 0;
  #rearRate = 0;
  #frontTurn = 0;
  #rearTurn = 0;
  #warmedOver = 0;
  #jerk = 0;
  /** Pa, front line pressure that the foot asks for, behind its lag: at the present node, and at the end of the step. */
  #pressure = 0;
  #endPressure = 0;
  /** N past its limit at the present node; which axle lets go next. */
  #frontExcess = 0;
  #rearExcess = 0;
  #frontIsNext = true;
  /** Whether it goes past its limit upwards. */
  #isRising = true;
  #switches = 0;

  /**
   * @param layers - layers of each rotor's half thickness, 1
   * @param heats - what keeps the heat of each axle; the rotors alone where left out
   */
  constructor(layers: number, heats?: AxleHeats) {
    this.car = new BrakedCar(layers, heats);
  }

  /** Takes on a stop and stands at its first touch. With `warm` false the rotors stay as warm as they are. */
  start(input: StopInput, warm: boolean, observer?: MarchObserver): void {
    this.#wantsBooks = true;
    this.#begin(input, warm, observer);
  }

  /** Takes on a stop of which only the distance is wanted: the books stay empty but for the heat that is on its way. */
  startForDistance(input: StopInput): void {
    this.#wantsBooks = false;
    this.#begin(input, true);
  }

  #begin(input: StopInput, warm: boolean, observer?: MarchObserver): void {
    this.#entrySpeed = requireRange('speed', input.speed, 'm/s', 0.1, 150);
    this.#refinement = requireRange('refinement', input.refinement ?? 1, '', 0.25, 1000);
    this.#observer = observer;
    this.#antilockFloor = loadStop(input, this.car, this.rise, warm);
    this.time = 0;
    this.speed = input.speed;
    this.distance = 0;
    this.deceleration = 0;
    this.cameToRest = true;
    this.#frontRate = 0;
    this.#rearRate = 0;
    this.#frontTurn = 0;
    this.#rearTurn = 0;
    this.#warmedOver = 0;
    this.#switches = 0;
    this.books.open(this.car, input.speed);
    if (this.#antilockFloor >= input.speed) this.car.keeper.releaseAntilock();
    this.#settle();
    observer?.(this);
  }

  /** Marches to rest, or to where the car no longer slows. */
  run(): void {
    this.#marchByTime();
    if (this.car.keeper.kind !== 'antilock' || this.#antilockFloor === 0) {
      this.#marchToSpeed(0, speedSteps + lowSpeedSteps);
      return;
    }
    if (this.#antilockFloor < this.speed) this.#marchToSpeed(this.#antilockFloor, speedSteps);
    this.car.keeper.releaseAntilock();
    this.#settle();
    this.#observer?.(this);
    this.#marchByTime();
    this.#marchToSpeed(0, lowSpeedSteps);
  }

  /** Over what is left of the ramp and of the lag after it; left early where speed is the better guide. */
  #marchByTime(): void {
    const { rampTime, lag } = this.rise;
    const ramp = rampTime - this.time;
    if (ramp > shortestSpan && !this.#marchForTime(ramp, Math.max(rampSteps, ramp / longestRampStep), 1))
      return;
    const rest = rampTime + lagsByTime * lag - this.time;
    if (rest > shortestSpan && this.car.keeper.leavesBrakesFree())
      this.#marchForTime(rest, rampTime > 3 * lag ? lagSteps : rampSteps, lagStretch);
  }

  /** Steps over a span of time, s, the last one `stretch` times as long as the first; false where it is left early. */
  #marchForTime(span: number, steps: number, stretch: number): boolean {
    const slowness = Math.min(mostSlowness, Math.max(1, briskSpeed / this.#entrySpeed));
    const count = Math.ceil(steps * this.#refinement * slowness * slightlyLess);
    const ratio = Math.pow(stretch, 1 / Math.max(1, count - 1));
    const floor = this.car.keeper.kind === 'antilock' ? this.#antilockFloor : 0;
    let size = ratio === 1 ? span / count : (span * (ratio - 1)) / (Math.pow(ratio, count) - 1);
    for (let i = 0; i < count; i += 1) {
      const lost = this.deceleration * size;
      if (lost > 0.12 * this.speed || this.speed - 1.5 * lost < floor) return false;
      this.#advance(size, true);
      size *= ratio;
    }
    return true;
  }

  /** Steps of equal loss of speed down to `last`, m/s, shorter ones where they would last long, by time where hardly any is lost. */
  #marchToSpeed(last: number, steps: number): void {
    const { body } = this.car;
    const slowing = Math.max(body.airDrag, body.mass * this.deceleration);
    const draggy = slowing > 0 ? Math.max(1, (6 * body.airDrag) / slowing) : 1;
    const widest = (this.speed - last) / (steps * this.#refinement * draggy);
    while (this.speed > last && this.time < mostTime) {
      const longest = this.#longestNow();
      const toGo = this.speed - last;
      const lost = this.#untilBend(Math.min(widest, this.deceleration * longest));
      if (this.deceleration < gentleDeceleration && lost < toGo) this.#advance(longest, true);
      else this.#advance(toGo < 1.2 * lost ? toGo : lost, false);
    }
    this.cameToRest = this.speed <= last;
  }

  /** s, as long as a step may be now. */
  #longestNow(): number {
    const early = Math.min(earlyStep + stepGrowth * this.time, firstStep + firstGrowth * this.time);
    return Math.min(longestStep, early) / this.#refinement;
  }

  /** m/s of speed to lose in a step, so that it ends where the grip on water bends rather than goes over that. */
  #untilBend(lost: number): number {
    const toBend = this.speed - this.car.front.water.bendBelow(this.speed * (1 - 1e-12));
    return Math.min(lost, toBend);
  }

  /** One step of `whole` (s, or m/s of speed lost), cut where a wheel pair lets go. */
  #advance(whole: number, byTime: boolean): void {
    let left = whole;
    while (left > 1e-9 * whole) {
      if (!byTime && this.deceleration < (left > nearlyRest ? leastDeceleration : 0)) return;
      this.#tryStep(left, byTime);
      if (!byTime && left > nearlyRest && this.#step.endDeceleration < leastDeceleration) {
        this.#advance(this.#longestNow(), true);
        return;
      }
      left -= this.#goOn(left, byTime);
    }
  }

  /** Takes the tried step of `left`, or what of it comes before a wheel pair lets go; answers how much. */
  #goOn(left: number, byTime: boolean): number {
    const size = this.#carefulShare() * left;
    if (size < left) this.#tryStep(size, byTime);
    const share = this.#shareUntilSwitch();
    if (share < 1 && this.#switches < mostSwitches) {
      const gone = this.#goToSwitch(size, byTime, share);
      this.#switches += 1;
      if (!this.#wasForeseenTooEarly()) this.#pass();
      return gone;
    }
    this.#accept();
    if (share < 1) this.#settle();
    return size;
  }

  /** Takes the part of a step of `size` after which a wheel pair lets go, about its `share`; answers the size of that part. */
  #goToSwitch(size: number, byTime: boolean, share: number): number {
    if (share < leastShare) return share * size;
    let low = 0;
    let high = 1;
    let atLow = this.#excessBefore();
    let atHigh = this.#excessNow();
    let at = share;
    for (let pass = 0; ; pass += 1) {
      this.#tryStep(at * size, byTime);
      const excess = this.#excessNow();
      if (pass === mostLooks || Math.abs(excess) <= this.#slack(closeExcess)) break;
      if (excess > 0 === atHigh > 0) {
        high = at;
        atHigh = excess;
        if (pass > 0) atLow *= 0.5;
      } else {
        low = at;
        atLow = excess;
        if (pass > 0) atHigh *= 0.5;
      }
      at = low + (high - low) * (atLow / (atLow - atHigh));
      if (at < leastShare) return at * size;
    }
    this.#accept();
    return at * size;
  }

  /** Lets the wheel pair go that is next. */
  #pass(): void {
    const { keeper } = this.car;
    this.#trip(this.#frontIsNext);
    this.#settle();
    if (this.#frontIsNext && keeper.frontIsSmooth) this.#frontExcess = 0;
    if (!this.#frontIsNext && keeper.rearIsSmooth) this.#rearExcess = 0;
    this.#observer?.(this);
  }

  /** Works out a step of `size` (s, or m/s of speed lost) without taking it. */
  #tryStep(size: number, byTime: boolean): void {
    const step = this.#step;
    this.#byTime = byTime;
    step.startSpeed = this.speed;
    step.startDeceleration = this.deceleration;
    if (byTime) {
      step.duration = size;
      const lost = size * (this.deceleration + 0.5 * size * this.#jerk);
      step.endSpeed = Math.max(0, this.speed - Math.max(0, lost));
    } else {
      step.endSpeed = this.speed - size;
      const squared = this.deceleration * this.deceleration + 2 * this.#jerk * size;
      step.duration = (2 * size) / (this.deceleration + Math.sqrt(Math.max(0, squared)));
    }
    this.#foreseePads(step.duration);
    this.#solveEnd(this.deceleration + this.#jerk * step.duration);
  }

  /** Lets the pads be as warm as the faces will be, s ahead of the present node. */
  #foreseePads(ahead: number): void {
    const { front, rear } = this.car;
    const since = this.books.waitingTime + ahead;
    const half = 0.5 * (since + this.#warmedOver);
    front.warmPads(front.heat.interfaceTemperature + (this.#frontRate + half * this.#frontTurn) * since);
    rear.warmPads(rear.heat.interfaceTemperature + (this.#rearRate + half * this.#rearTurn) * since);
  }

  /** Finds the deceleration at the end of the step in hand; makes speed and duration fit both its ends. */
  #solveEnd(guess: number): void {
    const step = this.#step;
    const { duration } = step;
    const pressure = this.rise.at(this.time + duration);
    step.endDeceleration = this.car.solve(step.endSpeed, pressure, guess);
    step.bend = this.car.bendsWithPressure(this.#pressure, pressure)
      ? this.car.bendOver(this.#pressure, this.rise.at(this.time + 0.5 * duration), pressure)
      : 0;
    this.#endPressure = pressure;
    const mean = step.meanDeceleration();
    if (this.#byTime) step.endSpeed = Math.max(0, step.startSpeed - duration * mean);
    else step.duration = (step.startSpeed - step.endSpeed) / Math.max(mean, 0.05 * step.startDeceleration);
    step.measure();
  }

  /** Share of the tried step, 1, after which the first wheel pair lets go; 1 where none does. */
  #shareUntilSwitch(): number {
    const { keeper } = this.car;
    const frontShare = shareUntilLimit(this.#frontExcess, keeper.frontExcess(), keeper.frontIsSmooth);
    const rearShare = shareUntilLimit(this.#rearExcess, keeper.rearExcess(), keeper.rearIsSmooth);
    this.#frontIsNext = frontShare <= rearShare;
    this.#isRising = this.#excessBefore() <= this.#excessNow();
    return Math.min(frontShare, rearShare);
  }

  /** Share of the tried step, 1, that is short enough where a leap of the force is near, for its pads to be known then. */
  #carefulShare(): number {
    const { front, rear, keeper } = this.car;
    const { duration } = this.#step;
    if (duration < shortestWarming || this.#switches >= mostSwitches) return 1;
    let share = 1;
    if (keeper.frontIsSudden)
      share = shareUntilNear(this.#frontExcess, keeper.frontExcess(), nearExcess * front.peak);
    if (keeper.rearIsSudden)
      share = Math.min(share, shareUntilNear(this.#rearExcess, keeper.rearExcess(), nearExcess * rear.peak));
    return share === 1 ? 1 : Math.min(1, Math.max(share, shortestWarming / duration));
  }

  /** N that the wheel pair that is next is past its limit: at the present node, and at the end of the step in hand. */
  #excessBefore(): number {
    return this.#frontIsNext ? this.#frontExcess : this.#rearExcess;
  }

  #excessNow(): number {
    const { keeper } = this.car;
    return this.#frontIsNext ? keeper.frontExcess() : keeper.rearExcess();
  }

  /** N, a share of the peak of the wheel pair that is next. */
  #slack(share: number): number {
    const { front, rear, body } = this.car;
    return share * (this.#frontIsNext ? front.peak : rear.peak) + leastExcess * body.mass;
  }

  /** Whether the wheel pair that was to let go is clearly short of it after all, its pads cooler than foreseen. */
  #wasForeseenTooEarly(): boolean {
    const past = this.#excessBefore();
    return (this.#isRising ? past : -past) < -this.#slack(smallExcess);
  }

  /** Lets a wheel pair go; the energy of wheels that lock is booked as taken by their brakes. */
  #trip(isFront: boolean): void {
    const { front, rear, keeper } = this.car;
    const frontBefore = front.turningEnergy(this.speed);
    const rearBefore = rear.turningEnergy(this.speed);
    if (isFront) keeper.tripFront();
    else keeper.tripRear();
    const frontTaken = frontBefore - front.turningEnergy(this.speed);
    this.books.bookLocking(this.car, frontTaken, rearBefore - rear.turningEnergy(this.speed));
  }

  /** Finds the deceleration at the present node anew, and which wheel pairs are past their peak there. */
  #settle(): void {
    const { keeper } = this.car;
    const pressure = this.rise.at(this.time);
    this.#pressure = pressure;
    this.#foreseePads(0);
    for (let pass = 0; pass < 4; pass += 1) {
      this.deceleration = this.car.solve(this.speed, pressure, this.deceleration);
      if (keeper.frontIsSudden && keeper.frontExcess() > 0) this.#trip(true);
      else if (keeper.rearIsSudden && keeper.rearExcess() > 0) this.#trip(false);
      else break;
    }
    this.#jerk = 0;
    this.#frontTurn = 0;
    this.#rearTurn = 0;
    this.books.readNode(this.car, this.deceleration);
    this.#readExcess();
  }

  #readExcess(): void {
    this.#frontExcess = this.car.keeper.frontExcess();
    this.#rearExcess = this.car.keeper.rearExcess();
  }

  /** Takes the tried step: heat first, then the forces that the warmer pads give, then the books. */
  #accept(): void {
    const step = this.#step;
    const { front, rear, keeper } = this.car;
    const frontWas = front.heat.interfaceTemperature;
    const rearWas = rear.heat.interfaceTemperature;
    const warmedOver = this.books.warmRotors(step, this.car, shortestWarming / this.#refinement);
    if (warmedOver > 0) {
      this.#correct();
      const frontRate = (front.heat.interfaceTemperature - frontWas) / warmedOver;
      const rearRate = (rear.heat.interfaceTemperature - rearWas) / warmedOver;
      const between = 0.5 * (warmedOver + this.#warmedOver);
      this.#frontTurn = (frontRate - this.#frontRate) / between;
      this.#rearTurn = (rearRate - this.#rearRate) / between;
      this.#frontRate = frontRate;
      this.#rearRate = rearRate;
      this.#warmedOver = warmedOver;
    }
    if (step.duration > shortestSpan) this.#jerk = (step.endDeceleration - this.deceleration) / step.duration;
    this.#book();
    this.time += step.duration;
    this.#pressure = this.#endPressure;
    this.distance += step.distance;
    this.speed = step.endSpeed;
    this.deceleration = step.endDeceleration;
    keeper.recover();
    this.#readExcess();
    this.#observer?.(this);
  }

  #book(): void {
    const { books } = this;
    if (this.#wantsBooks) {
      books.noteGates(this.#step, this.distance, this.#entrySpeed);
      books.book(this.#step, this.car);
    } else books.bookHeat(this.#step, this.car);
  }

  /** Solves the end of the step again where pads that rub have become warmer or cooler than was foreseen. */
  #correct(): void {
    const { front, rear } = this.car;
    const frontOff = frictionChange(front);
    const rearOff = frictionChange(rear);
    if (frontOff > smallFriction || rearOff > smallFriction) this.#solveEnd(this.#step.endDeceleration);
  }
}

/** Relative change of an axle's pad friction by its present face temperature, 1; it takes the new one. */
function frictionChange(axle: BrakedCar['front']): number {
  const foreseen = axle.friction;
  axle.warmPads(axle.heat.interfaceTemperature);
  return axle.grip === 'rolling' ? Math.abs(axle.friction / foreseen - 1) : 0;
}
