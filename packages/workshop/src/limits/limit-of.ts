import { quickStop } from '@standstill/braking';
import type { StopLimit } from '@standstill/braking';
import { stopInputOf } from '../predict/evaluate.ts';
import { trifles } from '../predict/trifles.ts';
import type { SetUpLimits } from '../results/limits-report.ts';
import type { SetUpPrediction, StopBudgetResult } from '../results/prediction.ts';
import type { Settled } from '../settle/settle.ts';

/** Share of a stop from which a poor balance counts as what holds the car back (assumed). */
const worthMending = 0.03;

interface LimitOfInput {
  /** What is predicted of the set-up. */
  readonly setUp: SetUpPrediction;
  readonly budget: StopBudgetResult;
  /** With the central values. */
  readonly settled: Settled;
}

/**
 * Names the one thing that holds a set-up back in one stop: the first of the pedal on the floor, a rear-first lock, brakes
 * that can not reach the tires' limit (by heat, by the foot, or at all), a poor balance, and the grip of the tires.
 *
 * Assumes: heat is what makes brakes too weak where pads as cool as the air would reach the tires' limit; a
 * balance is poor where its line in the budget is the largest, over 3 % of the stop and over what anybody would notice.
 *
 * @param input - the set-up and its stop budget
 * @returns the limit
 */
export function limitOf({ setUp, budget, settled }: LimitOfInput): SetUpLimits['limit'] {
  if (setUp.pedalBottoms) return 'pedal travel';
  if (setUp.limitedBy === 'rear lock' || setUp.balance.firstToLock === 'rear') return 'balance';
  if (setUp.limitedBy === 'brake torque') {
    if (coolLimit(settled) !== 'brake torque') return 'heat';
    return setUp.pedalForceAtLimit_N === null ? 'brake torque' : 'pedal effort';
  }
  const largest = budget.shares.reduce((most, share) => (share.distance_m > most.distance_m ? share : most));
  const least = Math.max(trifles.distance, worthMending * budget.total_m);
  return largest.effect === 'balance' && largest.distance_m > least ? 'balance' : 'tire grip';
}

/** What limits the same stop with brakes that start and stay as cool as the air. */
function coolLimit(settled: Settled): StopLimit {
  const { airTemperature } = settled.road;
  const rotorTemperatures = { front: airTemperature, rear: airTemperature };
  return quickStop({ ...stopInputOf(settled), rotorTemperatures, effectsOff: ['heat'] }).limitedBy;
}

/** How much longer the last of the repeated stops must be than the first for heat to be named (assumed). */
const faded = 1.1;

/** Last of the repeated stops over the first; null where there are no two, or the row is not driven to its end. */
export function lastOverFirst({ repeatedStops }: SetUpPrediction, asked: number): number | null {
  const [first, last] = [repeatedStops[0], repeatedStops.at(-1)];
  if (first === undefined || last === undefined || asked < 2 || repeatedStops.length < asked) return null;
  return last.distance_m / first.distance_m;
}

/** True where heat makes the repeated stops so much longer that it is worth a word. */
export function fades(ratio: number | null): boolean {
  return ratio !== null && ratio >= faded;
}
