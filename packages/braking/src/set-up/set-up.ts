import type { Antilock } from './antilock.ts';
import type { AxleBrake } from './axle-brake.ts';
import type { Booster } from './booster.ts';
import type { Car } from './car.ts';
import type { Fluid } from './fluid.ts';
import type { MasterCylinder } from './master-cylinder.ts';
import type { Pedal } from './pedal.ts';
import type { RearValve } from './rear-valve.ts';
import type { Tire } from './tire.ts';

/**
 * Everything that decides a stop, as plain numbers in SI: the one currency for set-ups.
 *
 * A set-up is a car with the parts that are on it. The road and the foot are not part of it, so that two set-ups
 * can be compared on the same road under the same foot. Wheels are ordered front-left, front-right, rear-left,
 * rear-right wherever four of anything appear.
 */
export interface SetUp {
  readonly car: Car;
  readonly frontTire: Tire;
  readonly rearTire: Tire;
  readonly pedal: Pedal;
  readonly booster: Booster;
  readonly masterCylinder: MasterCylinder;
  readonly circuitSplit: 'front-rear' | 'diagonal';
  readonly rearValve: RearValve;
  readonly antilock: Antilock;
  readonly fluid: Fluid;
  readonly frontBrake: AxleBrake;
  readonly rearBrake: AxleBrake;
}
