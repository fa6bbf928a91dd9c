import type { AxleBrake } from '../set-up/axle-brake.ts';
import type { RotorStep } from './rotor-step.ts';

/**
 * What keeps the heat of an axle's corners while a stop is marched: the rotors alone with a share of the heat that is put
 * in (`RotorState`, for single stops), or whole corners that share it out themselves (`CornerState`, for schedules).
 */
export interface AxleHeat {
  /** °C at the rotor's rubbing face. */
  readonly interfaceTemperature: number;
  /** J per m² of one swept face, lost to the air. */
  readonly lostPerArea: number;
  /** m², swept area of one face. */
  readonly sweptArea: number;
  /** True where a step's flux is all of the friction heat; false where it is the rotor's share of it. */
  readonly sharesHeat: boolean;
  /** 1, share that the rotor has taken, where the heat is shared out here; else 1. */
  readonly rotorShare: number;
  use(brake: AxleBrake): void;
  /** Sets one temperature, °C. */
  warmTo(temperature: number): void;
  /** °C that the ring would have with its heat spread evenly. */
  bulkTemperature(): number;
  /** J held above 20 °C. */
  energyStored(): number;
  step(step: RotorStep): void;
}

/** What keeps the heat of both axles. */
export interface AxleHeats {
  readonly front: AxleHeat;
  readonly rear: AxleHeat;
}
