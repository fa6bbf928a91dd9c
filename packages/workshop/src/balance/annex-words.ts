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
  const broken = rules.flatMap((rule) => brokenWords(rule, states, say));
  const named = listOf(states.map(({ state }) => stateWords[state]));
  const verdict = broken.length === 0 ? `both rules kept ${named}` : `broken, ${broken.join('; ')}`;
  return `${verdict}${sureWords(states)}${shortWords(states, say)}`;
}

const rules = [
  ['rearBelowFront', 'the rear uses more friction than the front'],
  ['adhesionWithinLimit', 'the braking rate is less than the grip has to give'],
] as const;

/** What breaks one rule, and from which deceleration on in each state of load. */
function brokenWords(
  [key, what]: (typeof rules)[number],
  states: readonly BalanceState[],
  say: Speaker,
): string[] {
  const from = states.flatMap(({ state, annexFive }) => {
    const { kept, brokenFrom_g } = annexFive[key];
    const start = say.rounded((brokenFrom_g ?? 0) * standardGravity, 'deceleration', 2);
    return kept ? [] : [`from ${start} on ${stateWords[state]}`];
  });
  return from.length === 0 ? [] : [`${what} ${listOf(from)}`];
}

/** The share of draws that keep both rules in every state looked at: no more than the least of them. */
function sureWords(states: readonly BalanceState[]): string {
  const shares = states.flatMap(({ annexFive }) => [
    annexFive.rearBelowFront.keptShare,
    annexFive.adhesionWithinLimit.keptShare,
  ]);
  const least = Math.min(...shares);
  return least === 1 ? '' : ` (kept in ${percent(least)} of the draws)`;
}

function shortWords(states: readonly BalanceState[], say: Speaker): string {
  const least = Math.min(...states.map(({ annexFive }) => annexFive.examinedTo_g));
  if (least >= wholeRange) return '';
  return `, looked at up to ${say.plain(least * standardGravity, 'deceleration')}, where the strongest foot ends`;
}
