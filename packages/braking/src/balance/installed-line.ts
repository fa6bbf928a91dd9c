import { requireRange } from '@standstill/numerics';
import { brakeForce } from '../corner/brake-force.ts';
import { brakeTorque } from '../corner/brake-torque.ts';
import { padFriction } from '../corner/pad-friction.ts';
import { boosterOutput } from '../foot-to-pressure/booster-output.ts';
import { masterCylinderGains } from '../foot-to-pressure/master-cylinder-gains.ts';
import { rodForce } from '../foot-to-pressure/rod-force.ts';
import type { AxleBrake } from '../set-up/axle-brake.ts';
import type { RearValve } from '../set-up/rear-valve.ts';
import type { SetUp } from '../set-up/set-up.ts';
import type { Tire } from '../set-up/tire.ts';
import type { PadTemperatures } from './pad-temperatures.ts';
import { strongestFoot } from './strongest-foot.ts';

/**
 * How both axles' brake forces follow the force on the master cylinder: straight lines with a few corners. Forces are of
 * both wheels of an axle.
 */
export interface InstalledLine {
  /** Pa/N, pressure over master force, before the rear valve. */
  readonly frontGain: number;
  /** Pa/N. */
  readonly rearGain: number;
  readonly rearValve: RearValve;
  /** Pa. */
  readonly frontPushOut: number;
  /** Pa. */
  readonly rearPushOut: number;
  /** N/Pa, axle brake force over pressure above push-out. */
  readonly frontForcePerPressure: number;
  /** N/Pa, as the front. */
  readonly rearForcePerPressure: number;
  /** N, master force of the strongest foot. */
  readonly greatestMasterForce: number;
}

/**
 * Answers how the brakes as fitted share their force between the axles.
 *
 * Equation: per axle 2 T / r over (p − p_0), with T by `brakeTorque` and pressures by `masterCylinderGains`.
 * Assumes: both brakes of an axle are equal, friction at the given interface temperatures, nothing locks.
 * Valid: pad friction 0.01 to 1.5.
 *
 * @param setUp - the set-up
 * @param temperatures - interface temperatures of front and rear pads, °C
 * @returns gains in Pa/N and N/Pa, push-out pressures in Pa, greatest master force in N
 * @throws OutOfRangeError where an input cannot be
 * Source: [gillespie]
 * @example
 * installedLine(exampleSetUp, usualPadTemperatures).greatestMasterForce // => 6193.5
 */
export function installedLine(setUp: SetUp, temperatures: PadTemperatures): InstalledLine {
  const gains = masterCylinderGains(setUp.masterCylinder);
  const strongestRod = rodForce({ pedal: setUp.pedal, force: strongestFoot });
  return {
    frontGain: gains.front,
    rearGain: gains.rear,
    rearValve: setUp.rearValve,
    frontPushOut: setUp.frontBrake.caliper.pushOutPressure,
    rearPushOut: setUp.rearBrake.caliper.pushOutPressure,
    frontForcePerPressure: forcePerPressure(setUp.frontBrake, setUp.frontTire, temperatures.front),
    rearForcePerPressure: forcePerPressure(setUp.rearBrake, setUp.rearTire, temperatures.rear),
    greatestMasterForce: boosterOutput({ booster: setUp.booster, rodForce: strongestRod }).force,
  };
}

function forcePerPressure(brake: AxleBrake, tire: Tire, temperature: number): number {
  const friction = padFriction({ pad: brake.pad, temperature });
  requireRange('pad friction', friction, '', 0.01, 1.5);
  const pressure = brake.caliper.pushOutPressure + 1e6;
  return (2 * brakeForce({ torque: brakeTorque({ brake, pressure, friction }), tire })) / 1e6;
}
