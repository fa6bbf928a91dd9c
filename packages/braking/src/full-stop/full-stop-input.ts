import type { Road } from '../set-up/road.ts';
import type { SetUp } from '../set-up/set-up.ts';
import type { RotorTemperatures } from '../stop/stop-input.ts';
import type { AntilockControl } from './antilock-control.ts';
import type { FootInput } from './foot-input.ts';

export interface FullStopInput {
  readonly setUp: SetUp;
  readonly road: Road;
  readonly foot: FootInput;
  /** v_0, m/s, speed at the first touch of the pedal. */
  readonly speed: number;
  /** °C through the whole rotor at the start; `usualPadTemperatures` where left out. */
  readonly rotorTemperatures?: RotorTemperatures;
  /** Without antilock: share of its lock limit, 1, at which a driver holds the wheel that would lock first. */
  readonly driverShare?: number;
  /** Without antilock: true for a foot that stays down, so that wheels lock and slide. */
  readonly lockedWheels?: boolean;
  /** How the antilock works; `usualAntilockControl` where left out. */
  readonly antilockControl?: AntilockControl;
  /** When the control first looks, over its period, 1; above 0, to 1. Another one is another stop of the same kind. */
  readonly controlPhase?: number;
  /** Steps over the usual number, 1, a whole number; 2 halves every step. */
  readonly refinement?: number;
}
