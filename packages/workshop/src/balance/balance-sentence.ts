import type { SetUpBalance } from '../results/balance-report.ts';
import type { Warning } from '../results/warning.ts';
import { listOf } from '../words/list-of.ts';
import { percent } from '../words/percent.ts';
import type { Speaker } from '../words/speaker.ts';
import { firstWords, leastShare, lockWords, stateWords } from './lock-words.ts';

interface BalanceSentenceInput {
  readonly setUps: readonly SetUpBalance[];
  readonly warnings: readonly Warning[];
  readonly say: Speaker;
}

/** The answer of the whole report: a rear-first lock before anything else, then who locks first; of one set-up also where. */
export function balanceSentence({ setUps, warnings, say }: BalanceSentenceInput): string {
  const [first, ...others] = setUps;
  if (first === undefined) return 'There is no set-up to answer about.';
  const words =
    others.length === 0 ? `${first.title}: ${lockWords(first.states, say)}` : capitalized(orderWords(setUps));
  return `${dangerWords(setUps, warnings)}${words}.`;
}

/** `the front wheels lock first with "A" (86 % of the draws) and "B", the REAR wheels with "C"`: what is alike is told once. */
function orderWords(setUps: readonly SetUpBalance[]): string {
  const told = new Map<string, string[]>();
  for (const { title, states } of setUps) {
    const words = firstWords(states);
    const share = leastShare(states);
    const sure = share === 1 ? '' : ` (${percent(share)} of the draws)`;
    told.set(words, [...(told.get(words) ?? []), `"${title}"${sure}`]);
  }
  return [...told].map(([words, titles]) => `${words} with ${listOf(titles)}`).join('; ');
}

function capitalized(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

function dangerWords(setUps: readonly SetUpBalance[], warnings: readonly Warning[]): string {
  const loud = new Set(warnings.filter(({ severity }) => severity === 'danger').map(({ about }) => about));
  const found = setUps.filter(({ id }) => loud.has(id));
  const sure = found.filter(isCentral).map((setUp) => `"${setUp.title}" ${whenWords(setUp)}`);
  const perhaps = found
    .filter((setUp) => !isCentral(setUp))
    .map((setUp) => `"${setUp.title}" in ${percent(mostShare(setUp))} of the draws`);
  const clauses = [
    ...(sure.length === 0 ? [] : [`the rear wheels lock first with ${listOf(sure)}`]),
    ...(perhaps.length === 0 ? [] : [`the rear wheels may lock first with ${listOf(perhaps)}`]),
  ];
  return clauses.length === 0 ? '' : `DANGER: ${clauses.join(', and ')}. `;
}

function isCentral({ states }: SetUpBalance): boolean {
  return states.some(({ rearFirst }) => rearFirst.central !== null);
}

/** In which state of load, and which pads it takes. */
function whenWords({ states }: SetUpBalance): string {
  const shown = states.filter(({ rearFirst }) => rearFirst.central !== null);
  const named = listOf(shown.map(({ state }) => stateWords[state]));
  const pads = new Set(shown.map(({ rearFirst }) => rearFirst.central?.pads));
  const [only] = pads;
  return pads.size === 1 && only !== undefined && only !== 'warm'
    ? `${named} once the pads are ${only}`
    : named;
}

function mostShare({ states }: SetUpBalance): number {
  return Math.max(...states.map(({ rearFirst: { share, shareHot } }) => Math.max(share, shareHot ?? 0)));
}
