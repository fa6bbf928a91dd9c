import { requireRange } from '@standstill/numerics';
import { quickStop, stopWorkspace } from '../stop/quick-stop.ts';
import { stopEffects, type StopEffect } from '../stop/stop-effect.ts';
import type { StopInput } from '../stop/stop-input.ts';
import { shapley } from './shapley.ts';

export interface BudgetShare {
  readonly effect: StopEffect;
  /** m that the effect adds to the stop; negative where it shortens it. */
  readonly distance: number;
}

export interface StopBudget {
  /** m, whole stop. */
  readonly distance: number;
  /** m, the same stop with every effect off. */
  readonly idealDistance: number;
  /** One share per effect, in the order of `stopEffects`; together they are distance less ideal distance. */
  readonly shares: readonly BudgetShare[];
}

/**
 * Answers where the feet of a stop go: how much longer than the ideal stop it is, and which effect carries how much.
 *
 * Equation: Shapley value of the stopping distance over `stopEffects`, all 2^6 combinations by `quickStop`.
 * Assumes: as `quickStop`. The ideal stop keeps drag, lift, rolling resistance and grade of the real one; every tire is
 * at the peak friction of its static load from the first instant. An effect whose off state changes nothing gets zero.
 * Valid: as `quickStop`, where every combination comes to rest; foot force from 1 N.
 *
 * @param input - as for `quickStop`, without `effectsOff`
 * @returns m: the stop, its ideal, and one share per effect
 * @throws OutOfRangeError where an input cannot be, or the car does not come to rest
 * Source: [shapley-1953]
 * @example
 * stopBudget({ setUp: exampleSetUp, road: exampleRoad, foot: { force: 300, rampTime: 0.2 }, speed: 27.8 }).idealDistance // => 38.1107
 */
export function stopBudget(input: Omit<StopInput, 'effectsOff'>): StopBudget {
  requireRange('pedal force', input.foot.force, 'N', 1, 5000);
  const march = stopWorkspace();
  const all = 2 ** stopEffects.length - 1;
  let distanceOfAll = Number.NaN;
  let distanceOfNone = Number.NaN;
  const distanceWith = (set: number): number => {
    const effectsOff = stopEffects.filter((_, index) => (set & (1 << index)) === 0);
    const { distance } = quickStop({ ...input, effectsOff }, march);
    if (set === 0) distanceOfNone = distance;
    if (set === all) distanceOfAll = distance;
    return requireRange('stopping distance', distance, 'm', 0, 1e6);
  };
  const shares = shapley(stopEffects.length, distanceWith);
  return {
    distance: distanceOfAll,
    idealDistance: distanceOfNone,
    shares: stopEffects.map((effect, index) => ({ effect, distance: shares[index] ?? Number.NaN })),
  };
}
