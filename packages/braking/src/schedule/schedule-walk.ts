import { requireRange } from '@standstill/numerics';
import { strongestFoot } from '../balance/strongest-foot.ts';
import { pedalForceFor } from '../foot-to-pressure/pedal-force-for.ts';
import type { Road } from '../set-up/road.ts';
import { frontParts, rearParts } from '../stop/axle-parts.ts';
import { summarize, type StopSummary } from '../stop/quick-stop.ts';
import type { RotorTemperatures, StopInput } from '../stop/stop-input.ts';
import { StopMarch, type MarchObserver } from '../stop/stop-march.ts';
import { BrakesHeat } from './brakes-heat.ts';
import type { CourseRecorder } from './heat-course.ts';
import { holdDeceleration, pressFor } from './hold-deceleration.ts';
import type { Descent, FootStop, HeldSlowing, Regain, ScheduleEvent } from './schedule-event.ts';
import { StopDraft } from './stop-draft.ts';
import type { ScheduledStop } from './scheduled-stop.ts';
import { HighestReadings } from './highest-readings.ts';

/** Layers of the rotors' half thickness and of the pads over a schedule. */
export const scheduleLayers = 4;
export const schedulePadLayers = 3;
/** Speed at which the cooling of a whole slowing is read, over the speed at its start (about its mean over time). */
const coolingSpeedShare = 0.6;
/** s, longest step of a descent, and while somebody waits for brakes to cool to a temperature. */
const descentStep = 4;
const watchedStep = 1;
/** s, longest that a car drives on to let its brakes cool to a temperature. */
const longestCooling = 3600;

/** A car on a road, and how its stops are marched; all but the first three as `StopInput`. */
export interface WalkInput extends Omit<StopInput, 'foot' | 'speed' | 'rotorTemperatures'> {
  /** °C of the rotors at the start; the rest of the brakes is as warm as driving has made it by then. */
  readonly rotorTemperatures: RotorTemperatures;
}

/**
 * Walks a car through events of a schedule, its brakes carrying their heat from one to the next.
 *
 * Equation: stops under a foot by `StopMarch` as `quickStop`, held decelerations by `holdDeceleration`, in between cooling
 * by `CornerState` with coefficients that follow speed and temperature.
 * Assumes: as these; both corners of an axle alike; pads released at once after a stop, at their running clearance.
 * Source: [gillespie], [limpert]
 */
export class ScheduleWalk {
  readonly heat = new BrakesHeat(scheduleLayers, schedulePadLayers);
  readonly stops: StopDraft[] = [];
  readonly highest = new HighestReadings();
  /** s, m/s and m since the start. */
  time = 0;
  speed = 0;
  distance = 0;
  /** True where a speed could not be regained in its interval at the stated rate. */
  isHurried = false;
  /** The summary of the last stop under a foot. */
  lastSummary: StopSummary | undefined;
  readonly #march: StopMarch;
  #input: WalkInput | undefined;
  #recorder: CourseRecorder | undefined;
  /** s and m at the last first touch. */
  #touchTime = 0;
  #touchDistance = 0;

  constructor() {
    this.#march = new StopMarch(scheduleLayers, this.heat);
  }

  /** Takes on a car and stands at the start, with rotors of its temperatures, °C. */
  begin(input: WalkInput, recorder?: CourseRecorder): void {
    const { front, rear } = input.rotorTemperatures;
    requireRange('front rotor temperature', front, '°C', -60, 1500);
    requireRange('rear rotor temperature', rear, '°C', -60, 1500);
    this.#input = input;
    this.#recorder = recorder;
    this.heat.take(input.setUp, input.road, input.rotorTemperatures);
    this.heat.release();
    this.stops.length = 0;
    this.highest.clear();
    this.time = 0;
    this.speed = 0;
    this.distance = 0;
    this.isHurried = false;
    this.#touchTime = 0;
    this.#touchDistance = 0;
  }

  /** True unless the last stop did not come to rest: then the schedule is over. */
  get goesOn(): boolean {
    return this.stops.at(-1)?.cameToRest !== false;
  }

  /** All stops so far. */
  get stopsDone(): readonly ScheduledStop[] {
    return this.stops.map((draft) => draft.finished());
  }

  /** Does one event. */
  go(event: ScheduleEvent): void {
    if (this.#recorder !== undefined && this.time === 0) this.#note();
    this.#do(event);
    this.#seeMeans();
  }

  #do(event: ScheduleEvent): void {
    switch (event.kind) {
      case 'stop':
        return this.#stop(event);
      case 'slow':
        return this.#slow(event);
      case 'accelerate':
        return this.#accelerate(event.to, event.rate);
      case 'drive':
        return this.#drive(event.speed, requireRange('driving time', event.time, 's', 0, 1e6));
      case 'regain':
        return this.#regain(event);
      case 'descent':
        return this.#descend(event);
      case 'parked':
        this.speed = 0;
        return this.#drive(0, requireRange('parked time', event.time, 's', 0, 1e6));
    }
  }

  #stopInput(speed: number, road?: Road): StopInput {
    const given = this.#given();
    return { ...given, road: road ?? given.road, foot: { force: 0, rampTime: 0 }, speed };
  }

  #given(): WalkInput {
    if (this.#input === undefined) throw new TypeError('the walk has not begun');
    return this.#input;
  }

  #touch(speed: number, event: FootStop | HeldSlowing): StopDraft {
    this.speed = speed;
    this.#touchTime = this.time;
    this.#touchDistance = this.distance;
    const draft = new StopDraft(this.stops.length + 1, this.time, event, this.heat);
    const first = this.stops.find((stop) => stop.isLike(event));
    this.stops.push(draft);
    draft.first = first ?? draft;
    this.heat.press(coolingSpeedShare * speed);
    return draft;
  }

  #stop(event: FootStop): void {
    const draft = this.#touch(event.from, event);
    const input = { ...this.#stopInput(event.from), foot: event.foot };
    const [startTime, startDistance] = [this.time, this.distance];
    this.#march.start(input, false, this.#observer(startTime, startDistance));
    this.#march.run();
    this.time = startTime + this.#march.time;
    this.distance = startDistance + this.#march.distance;
    this.speed = this.#march.speed;
    const summary = summarize(input, this.#march);
    this.lastSummary = summary;
    this.heat.release();
    this.highest.seeFaces(summary.front.peakInterface, summary.rear.peakInterface);
    draft.seeFaces(summary.front.peakInterface, summary.rear.peakInterface);
    this.#see();
    draft.end(summary.distance, summary.time, event.foot.force, true, summary.cameToRest, this.heat);
  }

  /** Writes the nodes of a stop down, where somebody wants them. */
  #observer(startTime: number, startDistance: number): MarchObserver | undefined {
    if (this.#recorder === undefined) return undefined;
    return (march) => {
      this.time = startTime + march.time;
      this.speed = march.speed;
      this.distance = startDistance + march.distance;
      this.#note();
    };
  }

  #slow(event: HeldSlowing): void {
    const { setUp } = this.#given();
    const draft = this.#touch(event.from, event);
    this.#march.start(this.#stopInput(event.from), false);
    const from = this.time;
    const held = holdDeceleration(this.#march.car, event, (time, speed) => {
      this.time = from + time;
      this.speed = speed;
      this.#see();
    });
    this.distance += held.distance;
    this.heat.release();
    const force = held.pressure > 0 ? pedalForceFor({ setUp, frontPressure: held.pressure }) : 0;
    const isWithinReach = held.isWithinReach && force <= strongestFoot;
    draft.end(held.distance, held.time, force, isWithinReach, true, this.heat);
  }

  #accelerate(to: number, rate: number): void {
    requireRange('speed to reach', to, 'm/s', 0, 150);
    requireRange('acceleration', rate, 'm/s²', 0.01, 30);
    this.#change(to, Math.abs(to - this.speed) / rate);
  }

  /** Changes the speed evenly over a time, s. */
  #change(to: number, duration: number): void {
    const from = this.speed;
    if (duration > 0) this.#cool(duration, [from, to], () => false);
    this.speed = to;
  }

  #drive(speed: number, duration: number): void {
    requireRange('speed', speed, 'm/s', 0, 150);
    this.speed = speed;
    if (duration > 0) this.#cool(duration, [speed, speed], () => false);
  }

  #cool(
    duration: number,
    speeds: readonly [number, number],
    isEnough: () => boolean,
    longest?: number,
  ): void {
    const from = this.time;
    let before = this.speed;
    this.heat.cool(
      duration,
      speeds,
      (time, speed) => {
        this.distance += 0.5 * (before + speed) * (from + time - this.time);
        this.time = from + time;
        before = speed;
        this.speed = speed;
        this.#see();
        if (this.#recorder !== undefined) this.#seeMeans();
        return isEnough();
      },
      longest,
    );
  }

  #regain({ to, rate, interval, distance, coolTo }: Regain): void {
    requireRange('speed to regain', to, 'm/s', 0, 150);
    if (rate !== undefined) requireRange('acceleration', rate, 'm/s²', 0.01, 30);
    const left = interval === undefined ? Infinity : Math.max(0, interval - (this.time - this.#touchTime));
    const needed = rate === undefined ? left : Math.abs(to - this.speed) / rate;
    if (needed > left * (1 + 1e-9) || (rate === undefined && left === 0)) this.isHurried = true;
    this.#change(to, Number.isFinite(needed) ? Math.min(needed, left) : 0);
    const untilInterval = interval === undefined ? Infinity : interval - (this.time - this.#touchTime);
    const metersLeft = distance === undefined ? Infinity : distance - (this.distance - this.#touchDistance);
    const untilDistance = to > 0 ? metersLeft / to : Infinity;
    const most = coolTo === undefined ? 0 : longestCooling;
    const wait = Math.min(untilInterval, untilDistance);
    this.#wait(Number.isFinite(wait) ? wait : most, coolTo);
  }

  #wait(duration: number, coolTo: number | undefined): void {
    if (!(duration > 0)) return;
    if (coolTo === undefined) return this.#drive(this.speed, duration);
    const isCool = (): boolean => this.#hotterRing() <= coolTo;
    if (!isCool()) this.#cool(duration, [this.speed, this.speed], isCool, watchedStep);
  }

  #hotterRing(): number {
    return Math.max(this.heat.front.bulkTemperature(), this.heat.rear.bulkTemperature());
  }

  #descend({ grade, speed, time, brakeShare }: Descent): void {
    requireRange('fall of the descent', grade, '', 0, 0.4);
    requireRange('time of the descent', time, 's', 0, 1e5);
    requireRange("brakes' share of the descent", brakeShare, '', 0, 1);
    const { setUp, road: level } = this.#given();
    const road = { ...level, grade: -grade };
    this.#march.start(this.#stopInput(speed, road), false);
    this.speed = speed;
    this.heat.press(speed);
    const { car } = this.#march;
    car.front.coolAt(speed, frontParts(setUp, road));
    car.rear.coolAt(speed, rearParts(setUp, road));
    const steps = Math.max(1, Math.ceil(time / descentStep));
    for (let i = 0; i < steps; i += 1) {
      pressFor(car, speed, 0, brakeShare);
      for (const axle of [car.front, car.rear]) {
        axle.warm(time / steps, Math.max(0, axle.brakesTake(0)) * speed, 0);
        axle.warmPads(axle.heat.interfaceTemperature);
      }
      this.time += time / steps;
      this.distance += (speed * time) / steps;
      this.#see();
    }
    this.heat.release();
  }

  /** Looks at both axles at the present node. */
  #see(): void {
    const { front, rear } = this.heat;
    this.highest.see(this.time, front, rear);
    this.stops.at(-1)?.see(this.heat);
    if (this.#recorder !== undefined) this.#note();
  }

  #seeMeans(): void {
    this.highest.seeMeans(this.heat.front, this.heat.rear);
  }

  #note(): void {
    this.#recorder?.note(this.time, this.speed, this.heat.front, this.heat.rear);
  }
}
