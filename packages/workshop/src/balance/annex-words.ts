import { standardGravity } from '@standstill/braking';
import type { BalanceState } from '../results/balance-report.ts';
import { listOf } from '../words/list-of.ts';
import { percent } from '../words/percent.ts';
import type { Speaker } from '../words/speaker.ts';
import { stateWords } from './lock-words.ts';

/** g up to which the regulation looks. */
const wholeRange = 0.8 - 1e-6;

interface Judged {
  readonly title: string;
  readonly states: readonly BalanceState[];
}

/** What UN R13-H Annex 5 says of set-ups, what is alike told once: a yardstick only where the car has ABS. */
export function annexSentence(setUps: readonly Judged[], say: Speaker): string {
  const told = new Map<string, string[]>();
  for (const { title, states } of setUps) {
    const words = verdictWords(states, say);
    told.set(words, [...(told.get(words) ?? []), `"${title}"`]);
  }
  const clauses = [...told].map(([words, titles]) => `${listOf(titles)}: ${words}`);
  return `UN R13-H Annex 5${yardstickWords(setUps)}: ${clauses.join('; ')}.`;
}

function yardstickWords(setUps: readonly Judged[]): string {
  const withAntilock = setUps.filter(({ states }) => states[0]?.annexFive.yardstickOnly === true);
  if (withAntilock.length === 0) return '';
  return withAntilock.length === setUps.length
    ? ', a yardstick only since the car has ABS'
    : `, a yardstick only where there is ABS (${listOf(withAntilock.map(({ title }) => `"${title}"`))})`;
}

function verdictWords(states: readonly BalanceState[], say: Speaker): string {
  const broken = states.flatMap((state) => brokenWords(state, say));
  const named = listOf(states.map(({ state }) => stateWords[state]));
  const verdict =
    broken.length === 0
      ? `both rules kept ${named}`
      : `broken ${broken.length > 1 ? 'are' : 'is'} ${listOf(broken)}`;
  return `${verdict}${sureWords(states)}${shortWords(states, say)}`;
}

function brokenWords({ state, annexFive }: BalanceState, say: Speaker): string[] {
  const { rearBelowFront, adhesionWithinLimit } = annexFive;
  const from = (overG: number | null): string =>
    `from ${say.plain((overG ?? 0) * standardGravity, 'deceleration')} on ${stateWords[state]}`;
  return [
    ...(rearBelowFront.kept
      ? []
      : [
          `the rule that the rear uses no more friction than the front, ${from(rearBelowFront.brokenFrom_g)}`,
        ]),
    ...(adhesionWithinLimit.kept
      ? []
      : [`the least braking rate that the grip has to give, ${from(adhesionWithinLimit.brokenFrom_g)}`]),
  ];
}

/** The share of draws that keep both rules in every state looked at: no more than the least of them. */
function sureWords(states: readonly BalanceState[]): string {
  const shares = states.flatMap(({ annexFive }) => [
    annexFive.rearBelowFront.keptShare,
    annexFive.adhesionWithinLimit.keptShare,
  ]);
  const least = Math.min(...shares);
  return least === 1 ? '' : ` (the worst rule is kept in ${percent(least)} of the draws)`;
}

function shortWords(states: readonly BalanceState[], say: Speaker): string {
  const least = Math.min(...states.map(({ annexFive }) => annexFive.examinedTo_g));
  if (least >= wholeRange) return '';
  return `, looked at up to ${say.plain(least * standardGravity, 'deceleration')}, where the strongest foot ends`;
}
