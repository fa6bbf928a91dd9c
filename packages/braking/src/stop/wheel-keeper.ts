import { requireRange } from '@standstill/numerics';
import type { BrakedAxle } from './braked-axle.ts';
import { DriverFoot } from './driver-foot.ts';
import type { RearLine } from './rear-line.ts';
import { usualDriverShare, type StopInput } from './stop-input.ts';
import type { StopLimit } from './stop-limit.ts';

/**
 * Who keeps the wheels from locking, and what the tires give under it: antilock (the stated efficiency of the peak once
 * the brakes have asked for more than the peak), an electronic rear limit (never more than the limit), a driver
 * (`DriverFoot`), or nobody (wheels past their peak slide until rest).
 *
 * Assumes: as `quickStop`. Antilock and sliding begin with a leap of the force, rear limit and driver with a bend; the
 * march cuts its step there, and where antilock lets go (`frontExcess`, `rearExcess`, `tripFront`, `tripRear`).
 * Source: [common-practice]
 */
export class WheelKeeper {
  kind: 'antilock' | 'driver' | 'nobody' = 'nobody';
  readonly driver = new DriverFoot();
  /** True where the brake force is shared ideally between the axles, both using the same part of their peak. */
  balanced = false;
  /** 1, share of the peak at which antilock or driver hold. */
  #share = 1;
  #rearLimited = false;
  /** The axle that locked first; undefined while none has. */
  #firstLock: 'front lock' | 'rear lock' | undefined;
  readonly #front: BrakedAxle;
  readonly #rear: BrakedAxle;
  readonly #line: RearLine;

  /**
   * @param front - the axles that it keeps
   * @param rear - as `front`
   * @param line - how the rear pressure follows the front one
   */
  constructor(front: BrakedAxle, rear: BrakedAxle, line: RearLine) {
    this.#front = front;
    this.#rear = rear;
    this.#line = line;
  }

  /** Takes on what the set-up has and what the stop asks for. */
  take({ setUp, driverShare, lockedWheels, effectsOff }: StopInput): void {
    const { antilock } = setUp;
    const perfect = effectsOff?.includes('lock control') === true;
    this.balanced = effectsOff?.includes('balance') === true;
    this.#rearLimited = antilock.electronicRearLimit;
    this.#firstLock = undefined;
    if (antilock.kind === 'threshold') {
      this.kind = 'antilock';
      this.#share = requireRange('antilock efficiency', antilock.efficiency, '', 0.3, 1);
    } else {
      this.kind = lockedWheels === true && !perfect ? 'nobody' : 'driver';
      this.#share = requireRange('share of the lock limit', driverShare ?? usualDriverShare, '', 0.1, 1);
    }
    if (perfect) this.#share = 1;
    this.driver.share = this.#share;
  }

  /** Switches antilock and its rear limit off, as they do themselves at low speed: what they held may slide. */
  releaseAntilock(): void {
    this.kind = 'nobody';
    this.#rearLimited = false;
    if (this.#front.grip === 'held') this.#front.grip = 'rolling';
    if (this.#rear.grip === 'held') this.#rear.grip = 'rolling';
  }

  /** Sets what both axles' tires give under a front line pressure, Pa, while the car slows at `deceleration`, m/s². */
  brake(pressure: number, deceleration: number): void {
    this.driver.pressure = pressure;
    this.driver.holds = 'none';
    this.#front.press(pressure, deceleration);
    this.#rear.press(this.#line.rearAt(pressure), deceleration);
    if (this.balanced) this.#giveBalanced();
    else if (this.kind === 'driver') {
      this.driver.modulate(this.#front, this.#rear, this.#line, deceleration, this.#rearLimited);
      if (this.#rearLimited) limitSmoothly(this.#rear, this.#rearLimit());
    } else {
      this.#giveKept(this.#front);
      if (this.#rearLimited) limitSmoothly(this.#rear, this.#rearLimit());
      else this.#giveKept(this.#rear);
    }
  }

  /**
   * N by which the front axle asks more than its limit while it rolls, or less than antilock gives while that holds it:
   * above zero it is to be tripped. −1 where it slides.
   */
  frontExcess(): number {
    const front = this.#front;
    if (this.kind === 'driver' && !this.balanced) return this.driver.excess;
    if (front.grip === 'locked') return -1;
    const isHeld = front.grip === 'held' && this.kind === 'antilock';
    const share = this.kind === 'driver' || isHeld ? this.#share : 1;
    const alone = front.demand - share * front.peak;
    const excess = this.balanced ? alone + this.#rear.demand - share * this.#rear.peak : alone;
    return isHeld ? -excess : excess;
  }

  /** As `frontExcess`, for the rear axle; balanced axles go together, by `frontExcess`. */
  rearExcess(): number {
    const rear = this.#rear;
    if (this.balanced) return -1;
    if (this.#rearLimited) return rear.demand - this.#rearLimit() * rear.peak;
    if (this.kind === 'driver' || rear.grip === 'locked') return -1;
    return rear.grip === 'held' ? this.#share * rear.peak - rear.demand : rear.demand - rear.peak;
  }

  /** Whether the front axle has one limit, passed either way without being tripped, where the force only bends. */
  get frontIsSmooth(): boolean {
    return this.kind === 'driver';
  }

  /** As `frontIsSmooth`, for the rear axle. */
  get rearIsSmooth(): boolean {
    return this.kind === 'driver' || this.#rearLimited;
  }

  /** Whether passing the front limit now changes the force in one leap, and not only its slope. */
  get frontIsSudden(): boolean {
    return !this.frontIsSmooth && this.#front.grip === 'rolling';
  }

  /** As `frontIsSudden`, for the rear axle. */
  get rearIsSudden(): boolean {
    return !this.rearIsSmooth && this.#rear.grip === 'rolling';
  }

  /**
   * Lets the front axle go past its limit: antilock holds it from now on, or lets it roll again, or it slides. Nothing
   * happens where it is smooth.
   */
  tripFront(): void {
    if (this.frontIsSmooth) return;
    this.#trip(this.#front, 'front lock');
    if (this.balanced) this.#rear.grip = this.#front.grip;
  }

  /** As `tripFront`, for the rear axle. */
  tripRear(): void {
    if (!this.rearIsSmooth) this.#trip(this.#rear, 'rear lock');
  }

  #trip(axle: BrakedAxle, lock: 'front lock' | 'rear lock'): void {
    if (axle.grip === 'held') axle.grip = 'rolling';
    else axle.grip = this.kind === 'antilock' ? 'held' : 'locked';
    if (axle.grip === 'locked') this.#firstLock ??= lock;
  }

  /** Lets held axles roll again where the brakes ask less than the control gives. */
  recover(): void {
    const front = this.#front;
    const rear = this.#rear;
    const frontSpare = this.#share * front.peak - front.demand;
    const rearSpare = this.#share * rear.peak - rear.demand;
    if (this.balanced) {
      if (front.grip !== 'held' || frontSpare + rearSpare <= 0) return;
      front.grip = 'rolling';
      rear.grip = 'rolling';
      return;
    }
    if (front.grip === 'held' && frontSpare > 0) front.grip = 'rolling';
    if (rear.grip === 'held' && rearSpare > 0) rear.grip = 'rolling';
  }

  /** Whether more pressure would still change what the tires give. */
  leavesBrakesFree(): boolean {
    if (this.driver.holds !== 'none') return false;
    return this.#front.grip === 'rolling' || this.#rear.grip === 'rolling';
  }

  /** What holds the stop back in this instant. */
  limit(): StopLimit {
    if (this.driver.holds !== 'none') return this.driver.holds === 'front' ? 'front lock' : 'rear lock';
    if (this.#firstLock !== undefined) return this.#firstLock;
    return this.#front.grip === 'rolling' && this.#rear.grip === 'rolling' ? 'brake torque' : 'tire grip';
  }

  /** Share of the peak, 1, at which an electronic rear limit holds. */
  #rearLimit(): number {
    return this.kind === 'antilock' ? this.#share : 1;
  }

  #giveKept(axle: BrakedAxle): void {
    if (axle.grip === 'rolling') axle.give();
    else axle.giveShare(axle.grip === 'held' ? this.#share : axle.slideRatio);
  }

  #giveBalanced(): void {
    const front = this.#front;
    const rear = this.#rear;
    const peaks = front.peak + rear.peak;
    const asked = front.demand + rear.demand;
    if (this.kind === 'driver') {
      front.grip = asked <= this.#share * peaks ? 'rolling' : 'held';
      rear.grip = front.grip;
    }
    if (front.grip === 'rolling') {
      const frontPart = peaks > 0 ? front.peak / peaks : 0.5;
      const slope = front.demandSlope + rear.demandSlope;
      front.givePart(frontPart, asked, slope);
      rear.givePart(1 - frontPart, asked, slope);
    } else {
      this.#giveKept(front);
      this.#giveKept(rear);
    }
  }
}

function limitSmoothly(axle: BrakedAxle, share: number): void {
  axle.grip = axle.demand <= share * axle.peak ? 'rolling' : 'held';
  if (axle.grip === 'rolling') axle.give();
  else axle.giveShare(share);
}
