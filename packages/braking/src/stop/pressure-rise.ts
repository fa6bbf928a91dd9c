import { requireRange } from '@standstill/numerics';
import { boosterAssist } from '../foot-to-pressure/booster-assist.ts';
import { masterCylinderGains } from '../foot-to-pressure/master-cylinder-gains.ts';
import { rodForce } from '../foot-to-pressure/rod-force.ts';
import type { Foot } from '../set-up/foot.ts';
import type { SetUp } from '../set-up/set-up.ts';

/** s; anything quicker is taken as no lag. */
const leastLag = 1e-6;

/**
 * The front line pressure over time under a foot that ramps up and holds, behind a first-order lag; exact, because the
 * pressure that the foot asks for is made of three straight lines (up to booster run-out, up to the held force, held).
 *
 * Equation: τ dp/dt = p_asked(t) − p, p(0) = 0; on a line p_asked = A + S t: p = A + S (t − τ) + (p_0 − A + S τ) e^(−t/τ).
 * Assumes: pressure asked for as `linePressures`; the lag is one constant through the application.
 * Valid: time from the first touch on.
 *
 * Allocates nothing after `follow`.
 * Source: [common-practice]
 */
export class PressureRise {
  /** Pa, front line pressure that the held force asks for. */
  held = 0;
  #lag = 0;
  #rampTime = 0;
  /** s, when the booster runs out; the ramp's end where it does not. */
  #kneeTime = 0;
  /** Pa asked for right after the first touch, at the knee, and what the line has at the knee and at the ramp's end. */
  #askedAtTouch = 0;
  #askedAtKnee = 0;
  #atKnee = 0;
  #atRampEnd = 0;

  /** Takes on a set-up and a foot. */
  follow(setUp: SetUp, foot: Foot): void {
    const gain = masterCylinderGains(setUp.masterCylinder).front;
    const assist = boosterAssist(setUp.booster);
    const rod = rodForce({ pedal: setUp.pedal, force: foot.force });
    this.#rampTime = requireRange('ramp time of the foot', foot.rampTime, 's', 0, 60);
    const kneeRod = assist.slope > 0 ? (assist.limit - assist.start) / assist.slope : 0;
    const kneeShare = assist.limit > 0 && rod > 0 ? Math.min(1, kneeRod / rod) : 1;
    this.#kneeTime = kneeShare * this.#rampTime;
    this.#askedAtTouch = rod > 0 ? gain * assist.start : 0;
    this.held = rod > 0 ? gain * (rod + Math.min(assist.start + assist.slope * rod, assist.limit)) : 0;
    const kneeForce = kneeShare * rod;
    const assistAtKnee = Math.min(assist.start + assist.slope * kneeForce, assist.limit);
    this.#askedAtKnee = rod > 0 ? gain * (kneeForce + assistAtKnee) : 0;
  }

  /** Sets the lag, s, and with it the whole course. */
  trail(lag: number): void {
    this.#lag = requireRange('pressure lag', lag, 's', 0, 10) < leastLag ? 0 : lag;
    const untilKnee = this.#kneeTime;
    this.#atKnee = this.#along(0, this.#askedAtTouch, this.#askedAtKnee, untilKnee, untilKnee);
    const afterKnee = this.#rampTime - this.#kneeTime;
    this.#atRampEnd = this.#along(this.#atKnee, this.#askedAtKnee, this.held, afterKnee, afterKnee);
  }

  /** s after which the pressure is within 1 % of what is asked for, however the ramp went. */
  settledAfter(): number {
    return this.#rampTime + 4.6 * this.#lag;
  }

  /** s of the ramp. */
  get rampTime(): number {
    return this.#rampTime;
  }

  /** s, time constant. */
  get lag(): number {
    return this.#lag;
  }

  /** Pa in the front line, t seconds after the first touch. */
  at(time: number): number {
    const pastRamp = time - this.#rampTime;
    if (pastRamp >= 0) return this.#toHeld(pastRamp);
    const pastKnee = time - this.#kneeTime;
    if (pastKnee >= 0) {
      const length = this.#rampTime - this.#kneeTime;
      return this.#along(this.#atKnee, this.#askedAtKnee, this.held, length, pastKnee);
    }
    return this.#along(0, this.#askedAtTouch, this.#askedAtKnee, this.#kneeTime, time);
  }

  #toHeld(time: number): number {
    if (time >= 24 * this.#lag) return this.held;
    return this.held + (this.#atRampEnd - this.held) * Math.exp(-time / this.#lag);
  }

  /** Pa after `time` on a straight line of asked pressure, `length` long. */
  #along(start: number, askedFirst: number, askedLast: number, length: number, time: number): number {
    if (length <= 0) return start;
    const slope = (askedLast - askedFirst) / length;
    const lag = this.#lag;
    if (lag === 0) return askedFirst + slope * time;
    const behind = start - askedFirst + slope * lag;
    return askedFirst + slope * (time - lag) + behind * Math.exp(-time / lag);
  }
}
