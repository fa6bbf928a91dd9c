import { requireRange } from '@standstill/numerics';
import type { Antilock } from '../set-up/antilock.ts';
import type { AntilockControl } from './antilock-control.ts';
import type { StopDynamics } from './stop-dynamics.ts';
import type { WheelFigures } from './wheel-figures.ts';

/** Where a wheel's control is in its cycle. */
const phase = { idle: 0, dump: 1, hold: 2, fast: 3, slow: 4 } as const;

/** s in which the fast build-up would make the pressure at which it let go. */
const fastTime = 0.1;
/** Part of the way from slip floor to slip threshold, 1, from which on a rim that slows much is taken to lock. */
const alertShare = 0.7;
/** m/s² of rim acceleration beyond the car's own, under which a wheel is taken to gain no more. */
const matchedRim = 3;
/** m/s, below which an electronic rear limit without antilock leaves the rear alone (assumed). */
const leastRearLimitSpeed = 2;
/** m/s, below which no control tells slip from rest, whatever is stated for it (assumed). */
const slowestWatch = 0.5;

/**
 * Looks at the wheels once a period and sets their valves: the generic antilock of `AntilockControl`, each front wheel by
 * itself and both rear wheels by the one that slips more; or, as an electronic rear limit, the rear wheels alone.
 *
 * Assumes: the control knows the car's speed and each wheel's exactly; its valves act at once.
 * Source: [common-practice]
 */
export class AntilockController {
  /** True while any wheel's pressure is in its hands. */
  active = false;
  /** How often pressure was let off in front and in the rear. */
  frontCycles = 0;
  rearCycles = 0;
  #frontIsKept = false;
  #rearIsKept = false;
  #leastSpeed = 0;
  #control: AntilockControl | undefined;
  #hasSet = false;
  readonly #phases = new Int32Array(4);
  /** Pa at which each wheel's pressure was let off last. */
  readonly #marks = new Float64Array(4);
  /** rad/s at the last look, and m/s² of the rim since. */
  readonly #turning = new Float64Array(4);
  readonly #rims = new Float64Array(4);

  /** Takes on what the set-up has. */
  take(antilock: Antilock, control: AntilockControl, { each }: WheelFigures): void {
    checkControl(control);
    this.#control = control;
    this.#frontIsKept = antilock.kind === 'threshold';
    this.#rearIsKept = antilock.kind === 'threshold' || antilock.electronicRearLimit;
    this.#leastSpeed =
      antilock.kind === 'threshold'
        ? Math.max(
            slowestWatch,
            requireRange('least speed of the antilock', antilock.minimumSpeed, 'm/s', 0, 20),
          )
        : leastRearLimitSpeed;
    this.#phases.fill(phase.idle);
    this.active = false;
    this.frontCycles = 0;
    this.rearCycles = 0;
    for (let wheel = 0; wheel < 4; wheel += 1) this.#turning[wheel] = each[wheel]!.turning;
  }

  /** Whether there is anything to look after. */
  get watches(): boolean {
    return this.#rearIsKept;
  }

  /** Looks at the wheels, `period` seconds after the last time, the car running at `speed`, m/s; answers whether a valve was set. */
  look(dynamics: StopDynamics, speed: number, period: number): boolean {
    if (!this.#rearIsKept) return false;
    this.#hasSet = false;
    this.#measure(dynamics, period);
    if (speed <= this.#leastSpeed) return this.#letGo(dynamics);
    if (this.#frontIsKept) {
      this.#decide(dynamics, speed, 0, 0);
      this.#decide(dynamics, speed, 1, 1);
    }
    this.#decide(dynamics, speed, 2, 3);
    const phases = this.#phases;
    this.active = phases[0] !== 0 || phases[1] !== 0 || phases[2] !== 0;
    return this.#hasSet;
  }

  #measure({ wheels }: StopDynamics, period: number): void {
    for (let wheel = 0; wheel < 4; wheel += 1) {
      const { turning, radius } = wheels.each[wheel]!;
      this.#rims[wheel] = (radius * (this.#turning[wheel]! - turning)) / period;
      this.#turning[wheel] = turning;
    }
  }

  #letGo({ wheels, lines }: StopDynamics): boolean {
    if (!this.active) return false;
    this.#phases.fill(phase.idle);
    for (const wheel of wheels.each) lines.follow(wheel);
    this.active = false;
    return true;
  }

  /** Decides for the wheels from `first` to `last`, which are kept as one. */
  #decide(dynamics: StopDynamics, speed: number, first: number, last: number): void {
    const control = this.#control!;
    const one = dynamics.wheels.each[first]!;
    const other = dynamics.wheels.each[last]!;
    const slowest = Math.min(one.turning, other.turning);
    const slip = 1 - (one.radius * slowest) / speed;
    const rim = Math.max(this.#rims[first]!, this.#rims[last]!) - dynamics.deceleration;
    const pressure = Math.max(one.pressure, other.pressure);
    const alertSlip = control.slipFloor + alertShare * (control.slipThreshold - control.slipFloor);
    const isFar = slip > control.slipThreshold;
    const locking = isFar || (rim > control.rimDeceleration && slip > alertSlip);
    const now = this.#phases[first]!;
    let next = now;
    if (now === phase.dump) {
      if (rim < 0 || pressure < 0.02 * this.#marks[first]!) next = phase.hold;
    } else if (now === phase.hold) {
      if (slip < control.slipFloor) next = phase.fast;
      else if (rim > 0 && locking) next = phase.dump;
      else if (rim > -matchedRim) next = isFar ? phase.dump : phase.slow;
    } else if (locking) {
      next = phase.dump;
      this.#mark(first, pressure);
    } else if (now === phase.fast && pressure >= control.fastShare * this.#marks[first]!) next = phase.slow;
    if (next === now) return;
    for (let wheel = first; wheel <= last; wheel += 1) this.#enter(dynamics, wheel, next, first);
  }

  #mark(wheel: number, pressure: number): void {
    this.#marks[wheel] = pressure;
    if (wheel < 2) this.frontCycles += 1;
    else this.rearCycles += 1;
  }

  #enter({ wheels, lines }: StopDynamics, wheel: number, next: number, first: number): void {
    const mark = this.#marks[first]!;
    this.#hasSet = true;
    this.#phases[wheel] = next;
    if (next === phase.dump) lines.dump(wheels.each[wheel]!);
    else if (next === phase.hold) lines.hold(wheels.each[wheel]!);
    else lines.build(wheels.each[wheel]!, mark / (next === phase.fast ? fastTime : this.#control!.buildTime));
  }
}

function checkControl(control: AntilockControl): void {
  requireRange('period of the antilock', control.samplePeriod, 's', 0.001, 0.05);
  requireRange('slip threshold of the antilock', control.slipThreshold, '', 0.01, 0.9);
  requireRange('slip floor of the antilock', control.slipFloor, '', 0.001, control.slipThreshold);
  requireRange('rim deceleration of the antilock', control.rimDeceleration, 'm/s²', 0.5, 200);
  requireRange('time of letting off', control.dumpTime, 's', 0.005, 1);
  requireRange('share given back fast', control.fastShare, '', 0, 1);
  requireRange('time of slow build-up', control.buildTime, 's', 0.02, 20);
}
