import { requireRange } from '@standstill/numerics';
import { usualPadTemperatures } from '../balance/pad-temperatures.ts';
import { frontParts, rearParts } from './axle-parts.ts';
import type { BrakedCar } from './braked-car.ts';
import { pressureLag } from './pressure-lag.ts';
import type { PressureRise } from './pressure-rise.ts';
import type { StopInput } from './stop-input.ts';
import { strengthenBrakes } from './strengthen-brakes.ts';

/** Speed at which the cooling of a whole stop is read, over the speed at its start (about its mean over time). */
const coolingSpeedShare = 0.6;

/**
 * Puts a stop's set-up, road, foot and effects into the car and the pressure rise of a march.
 *
 * @param input - the stop
 * @param car - the car to fill
 * @param rise - the pressure rise to fill
 * @param warm - whether the rotors get the start temperatures; false leaves them as warm as they are
 * @returns m/s, the speed at which antilock switches itself off; 0 where there is none or it never does
 * @throws OutOfRangeError where an input cannot be
 * Source: [geometry]
 */
export function loadStop(input: StopInput, car: BrakedCar, rise: PressureRise, warm: boolean): number {
  const { setUp, effectsOff } = input;
  car.body.take(input);
  car.line.follow(setUp);
  car.keeper.take(input);
  loadAxles(input, car, warm);
  if (effectsOff?.includes('load sensitivity') === true) {
    car.front.forgetLoadSensitivity(car.body.frontStill);
    car.rear.forgetLoadSensitivity(car.body.rearStill);
  }
  loadFoot(input, car, rise);
  if (effectsOff?.includes('torque') === true) strengthenBrakes(car, rise.held, input.speed);
  const { antilock } = setUp;
  if (antilock.kind === 'none' || effectsOff?.includes('lock control') === true) return 0;
  return requireRange('least speed of the antilock', antilock.minimumSpeed, 'm/s', 0, 20);
}

function loadAxles(input: StopInput, { front, rear }: BrakedCar, warm: boolean): void {
  const { setUp, road, effectsOff } = input;
  const frontAxle = frontParts(setUp, road);
  const rearAxle = rearParts(setUp, road);
  front.take(frontAxle, input.speed);
  rear.take(rearAxle, input.speed);
  const temperatures = input.rotorTemperatures ?? usualPadTemperatures;
  if (warm) front.heat.warmTo(temperatures.front);
  if (warm) rear.heat.warmTo(temperatures.rear);
  const fixed = effectsOff?.includes('heat') === true;
  front.startFriction(setUp.frontBrake.pad, fixed);
  rear.startFriction(setUp.rearBrake.pad, fixed);
  front.coolAt(coolingSpeedShare * input.speed, frontAxle);
  rear.coolAt(coolingSpeedShare * input.speed, rearAxle);
}

function loadFoot(
  { setUp, foot, effectsOff, pressureLag: stated }: StopInput,
  car: BrakedCar,
  rise: PressureRise,
): void {
  const instant = effectsOff?.includes('build-up') === true;
  rise.follow(setUp, instant ? { force: foot.force, rampTime: 0 } : foot);
  const frontPressure = rise.held;
  const rearPressure = car.line.rearAt(frontPressure);
  rise.trail(instant ? 0 : (stated ?? pressureLag({ setUp, frontPressure, rearPressure })));
}
