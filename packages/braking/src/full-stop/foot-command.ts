import { linearTable, requireRange } from '@standstill/numerics';
import { boosterAssist } from '../foot-to-pressure/booster-assist.ts';
import { masterCylinderGains } from '../foot-to-pressure/master-cylinder-gains.ts';
import { rodForce } from '../foot-to-pressure/rod-force.ts';
import type { SetUp } from '../set-up/set-up.ts';
import type { FootInput, TraceFoot } from './foot-input.ts';

/** Part of the force that is there at the first touch: a booster's jump-in comes with it. */
const firstTouch = 1e-9;
/** T, s, in which a seeking foot would make up for what is missing (assumed). */
const seekingTime = 0.15;

/**
 * What pressure the foot asks of the master cylinder: the same map from force to front pressure as `linePressures`,
 * without its checks.
 *
 * Equation: rod F_r = F_p i η; p = (F_r + min(start + slope F_r, limit)) gain, nothing at no force. A foot that seeks a
 * deceleration a_w: dF_p/dt = (a_w − a) (F / a) / T, T = 0.15 s (assumed), F / a of the brakes at a firm push.
 * Source: [common-practice]
 */
export class FootCommand {
  seeks = false;
  greatestForce = 0;
  /** s after which a foot that was told its force holds it. */
  settledAfter = 0;
  /** The same, but Infinity for a foot that seeks; and Pa in the front line from then on. */
  heldFrom = Number.NaN;
  heldPressure = Number.NaN;
  #foot: FootInput = { kind: 'ramp', force: 0, rampTime: 0 };
  #rodShare = 1;
  #gain = 1;
  #start = 0;
  #slope = 0;
  #limit = 0;
  /** N per m/s² and second. */
  #eagerness = 0;

  /** Takes on a set-up and a foot; `forcePerDeceleration` in N of pedal per m/s². */
  take(setUp: SetUp, foot: FootInput, forcePerDeceleration: number): void {
    this.#foot = foot;
    this.#rodShare = rodForce({ pedal: setUp.pedal, force: 1 });
    this.#gain = masterCylinderGains(setUp.masterCylinder).front;
    const assist = boosterAssist(setUp.booster);
    this.#start = assist.start;
    this.#slope = assist.slope;
    this.#limit = assist.limit;
    this.seeks = foot.kind === 'deceleration';
    this.#eagerness = forcePerDeceleration / seekingTime;
    this.settledAfter = checkFoot(foot);
    this.heldFrom = this.seeks ? Infinity : this.settledAfter;
    this.heldPressure = this.pressureFor(this.forceAt(this.settledAfter));
    this.greatestForce = foot.kind === 'deceleration' ? foot.greatestForce : 0;
  }

  /** N at the pedal pad that a foot which was told its force gives, s after the first touch. */
  forceAt(time: number): number {
    const foot = this.#foot;
    if (foot.kind === 'trace') return linearTable(foot.times, foot.forces, time);
    if (foot.kind === 'deceleration') return 0;
    return time < foot.rampTime ? foot.force * Math.max(firstTouch, time / foot.rampTime) : foot.force;
  }

  /** Pa in the front line for a force at the pedal pad, N. */
  pressureFor(force: number): number {
    if (force <= 0) return 0;
    const rod = this.#rodShare * force;
    const wanted = this.#start + this.#slope * rod;
    return this.#gain * (rod + (wanted < this.#limit ? wanted : this.#limit));
  }

  /** N/s by which a seeking foot changes its force while the car slows at `deceleration`, m/s². */
  forceRate(time: number, force: number, deceleration: number): number {
    const foot = this.#foot;
    if (foot.kind !== 'deceleration') return 0;
    const risen = time < foot.rampTime ? time / foot.rampTime : 1;
    const rate = this.#eagerness * (risen * foot.deceleration - deceleration);
    if (force >= foot.greatestForce && rate > 0) return 0;
    return force <= 0 && rate < 0 ? 0 : rate;
  }
}

function checkFoot(foot: FootInput): number {
  if (foot.kind === 'trace') return checkTrace(foot);
  requireRange('ramp time of the foot', foot.rampTime, 's', 0, 60);
  if (foot.kind === 'ramp') requireRange('pedal force', foot.force, 'N', 0, 5000);
  else {
    requireRange('deceleration wanted', foot.deceleration, 'm/s²', 0.05, 30);
    requireRange('greatest pedal force', foot.greatestForce, 'N', 1, 5000);
  }
  return foot.rampTime;
}

function checkTrace({ times, forces }: TraceFoot): number {
  requireRange('points of the pedal force', times.length, '', 1, 1e7);
  requireRange('values of the pedal force', forces.length, '', times.length, times.length);
  let last = requireRange('first time of the pedal force', times[0] ?? Number.NaN, 's', 0, 0);
  for (let i = 0; i < times.length; i += 1) {
    last = requireRange(`time ${i + 1} of the pedal force`, times[i] ?? Number.NaN, 's', last, 1e5);
    requireRange(`pedal force ${i + 1}`, forces[i] ?? Number.NaN, 'N', 0, 5000);
  }
  return last;
}
