import { standardGravity } from '@standstill/braking';
import type { BalanceState } from '../results/balance-report.ts';
import { listOf } from '../words/list-of.ts';
import { percent } from '../words/percent.ts';
import type { Speaker } from '../words/speaker.ts';

export const stateWords = { 'as-tested': 'as tested', laden: 'laden' } as const;

/** `the front wheels lock first, at 0.95 to 1.03 g as tested and 0.94 to 1.02 g laden, in every draw`. */
export function lockWords(states: readonly BalanceState[], say: Speaker): string {
  const [first, ...others] = states;
  if (first === undefined) return 'no state of load was looked at';
  const isSame = others.every(({ firstToLock }) => firstToLock === first.firstToLock);
  if (!isSame) return states.map((state) => `${stateWords[state.state]} ${oneState(state, say)}`).join(', ');
  const { firstToLock } = first;
  if (firstToLock === 'none')
    return `neither axle locks with the strongest foot of 1000 N, ${listOf(states.map(({ state }) => stateWords[state]))}`;
  const at = listOf(states.map((state) => `${rangeOf(state, say)} ${stateWords[state.state]}`));
  return `${axleWords[firstToLock]} lock first, at ${at}, ${sureWords(states)}`;
}

const axleWords = {
  front: 'the front wheels',
  rear: 'the REAR wheels',
  both: 'both axles at once',
  none: 'none of the wheels',
} as const;

/** `the front wheels lock first`, or in each state of load where they differ. */
export function firstWords(states: readonly BalanceState[]): string {
  const told = states.map(({ state, firstToLock }) => [stateWords[state], lockFirst[firstToLock]] as const);
  const [first] = told;
  if (first === undefined) return 'no state of load was looked at';
  if (told.every(([, words]) => words === first[1])) return first[1];
  return told.map(([state, words]) => `${state} ${words}`).join(', ');
}

const lockFirst = {
  front: 'the front wheels lock first',
  rear: 'the REAR wheels lock first',
  both: 'both axles lock at once',
  none: 'neither axle locks with the strongest foot of 1000 N',
} as const;

/** How sure the order is: the least of the states. */
export function leastShare(states: readonly BalanceState[]): number {
  return Math.min(...states.map(({ firstToLockShare }) => firstToLockShare));
}

function oneState(state: BalanceState, say: Speaker): string {
  if (state.firstToLock === 'none') return 'neither axle locks with 1000 N';
  const { firstToLock } = state;
  return `${axleWords[firstToLock]} lock first, at ${rangeOf(state, say)} (${sureWords([state])})`;
}

/** The interval of the deceleration at the first lock. */
function rangeOf({ lockDeceleration_g }: BalanceState, say: Speaker): string {
  if (lockDeceleration_g === null) return 'no deceleration';
  const { low, high } = lockDeceleration_g;
  return say.range(low * standardGravity, high * standardGravity, 'deceleration');
}

function sureWords(states: readonly BalanceState[]): string {
  const least = leastShare(states);
  return least === 1 ? 'in every draw' : `in ${percent(least)} of the draws`;
}
