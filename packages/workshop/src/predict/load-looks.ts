import { drivenForces } from '@standstill/braking';
import type { DrivenForces, SetUp } from '@standstill/braking';
import type { Settled } from '../settle/settle.ts';
import { loadStates } from './load-state.ts';
import type { LoadState } from './load-state.ts';

/** One state of the car and of its drive. */
export interface LoadLook {
  readonly state: LoadState;
  readonly setUp: SetUp;
  readonly driven: DrivenForces;
  /** True where the drive regenerates or creeps. */
  readonly byDrive: boolean;
}

/** The set-up with the car in one state of load. */
export function setUpIn({ setUp, ladenCar }: Settled, state: LoadState): SetUp {
  return state === 'laden' ? { ...setUp, car: ladenCar } : setUp;
}

/**
 * Every state of load and drive that a lock order has to hold in.
 *
 * @param settled - the set-up and its question
 * @param states - which states of load; both where left out
 * @returns the looks; the plain ones first in each state of load
 */
export function loadLooks(settled: Settled, states: readonly LoadState[] = loadStates): readonly LoadLook[] {
  const { regeneration, creep } = settled;
  return states.flatMap((state) => {
    const setUp = setUpIn(settled, state);
    return drivenForces({ setUp, regeneration, creep }).map((driven, index) => ({
      state,
      setUp,
      driven,
      byDrive: index > 0,
    }));
  });
}
