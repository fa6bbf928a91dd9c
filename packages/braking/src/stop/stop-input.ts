import type { Foot } from '../set-up/foot.ts';
import type { Road } from '../set-up/road.ts';
import type { SetUp } from '../set-up/set-up.ts';
import type { StopEffect } from './stop-effect.ts';

/** One temperature for the rotors of each axle. */
export interface RotorTemperatures {
  /** °C. */
  readonly front: number;
  /** °C. */
  readonly rear: number;
}

export interface StopInput {
  readonly setUp: SetUp;
  readonly road: Road;
  readonly foot: Foot;
  /** v_0, m/s, speed at the first touch of the pedal. */
  readonly speed: number;
  /** °C through the whole rotor at the start; `usualPadTemperatures` where left out. */
  readonly rotorTemperatures?: RotorTemperatures;
  /**
   * Without antilock: share of its lock limit, 1, at which a driver holds the axle that would lock first. 0.9 where
   * left out (assumed).
   */
  readonly driverShare?: number;
  /** Without antilock: true for a foot that stays down, so that wheels lock and slide. */
  readonly lockedWheels?: boolean;
  /** τ, s, instead of what `pressureLag` finds. */
  readonly pressureLag?: number;
  /** Effects put into their off state. */
  readonly effectsOff?: readonly StopEffect[];
  /** Steps of the march over the usual number, 1; 2 halves every step. */
  readonly refinement?: number;
}

/** Share of the lock limit at which a driver without antilock is taken to hold the pedal (assumed). */
export const usualDriverShare = 0.9;
