import type { BrakedAxle } from './braked-axle.ts';
import type { RearLine } from './rear-line.ts';

/**
 * A driver without antilock who feels the lock limit and takes pedal force back before any wheel locks: the axle that
 * would lock first is held at a share of its limit, the other one follows the installed line. A foot that stays below that
 * share is not touched.
 *
 * Equation: p = min(p_foot, p_s), p_s so that F_i = s F_peak,i at the first axle; p_r from p_f (or the other way round) by `RearLine`.
 * Assumes: the driver is never late and never over the limit; what that leaves unused is the share s. A foot between s and
 * the whole limit is eased back to s as well, though it would not lock: the margin is kept by whoever comes near the limit.
 * Were only a foot past the limit eased, a hair more force there would lengthen the stop by a tenth at one blow; so the
 * force at the road rises with the foot and then stays, without a leap.
 * Source: [common-practice]
 */
export class DriverFoot {
  /** s, 1, share of the lock limit. */
  share = 1;
  /** Pa, front line pressure that the driver leaves in the line. */
  pressure = 0;
  /** N by which the foot's full pressure is past the limit of the axle that is further past it; negative before it. */
  excess = -1;
  /** Its slope over deceleration, kg. */
  excessSlope = 0;
  /** The axle that is held at its limit. */
  holds: 'none' | 'front' | 'rear' = 'none';

  /** Both axles under the foot's full pressure, Pa, which they have already been pressed with. */
  modulate(
    front: BrakedAxle,
    rear: BrakedAxle,
    line: RearLine,
    deceleration: number,
    rearIsLimited: boolean,
  ): void {
    const frontShare = this.share * front.lighterShare;
    const rearShare = this.share * rear.lighterShare;
    const frontExcess = front.demand - frontShare * front.peak;
    const rearExcess = rearIsLimited ? -Infinity : rear.demand - rearShare * rear.peak;
    this.excess = Math.max(frontExcess, rearExcess);
    this.excessSlope =
      frontExcess >= rearExcess
        ? front.demandSlope - frontShare * front.peakSlope
        : rear.demandSlope - rearShare * rear.peakSlope;
    front.give();
    if (frontExcess > 0) this.#holdFront(front, rear, line, deceleration, frontShare);
    if (rearIsLimited) return;
    if (rear.demand > rearShare * rear.peak) this.#holdRear(front, rear, line, deceleration, rearShare);
    else rear.give();
  }

  #holdFront(front: BrakedAxle, rear: BrakedAxle, line: RearLine, deceleration: number, share: number): void {
    front.giveShare(share);
    const gain = front.forcePerPressure * front.friction;
    const asked = front.force + front.inertia * deceleration - front.engineForce;
    const wanted = front.pushOutPressure + (asked > 0 ? asked / gain : 0);
    const pressure = Math.min(this.pressure, wanted);
    const rearPressure = line.rearAt(pressure);
    const pressureSlope =
      asked > 0 ? ((front.forceSlope + front.inertia) / gain) * line.slopeAt(pressure) : 0;
    rear.press(rearPressure, deceleration);
    rear.demandSlope += rear.demandRise(rearPressure) * pressureSlope;
    this.pressure = pressure;
    this.holds = 'front';
  }

  #holdRear(front: BrakedAxle, rear: BrakedAxle, line: RearLine, deceleration: number, share: number): void {
    rear.giveShare(share);
    const gain = rear.forcePerPressure * rear.friction;
    const asked = rear.force + rear.inertia * deceleration - rear.engineForce;
    const rearPressure = rear.pushOutPressure + (asked > 0 ? asked / gain : 0);
    const pressure = Math.min(this.pressure, line.frontFor(rearPressure));
    const pressureSlope = asked > 0 ? (rear.forceSlope + rear.inertia) / (gain * line.slopeAt(pressure)) : 0;
    front.press(pressure, deceleration);
    front.demandSlope += front.demandRise(pressure) * pressureSlope;
    front.give();
    this.pressure = pressure;
    this.holds = 'rear';
  }
}
