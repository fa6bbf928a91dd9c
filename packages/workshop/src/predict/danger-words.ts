import type { SetUpPrediction } from '../results/prediction.ts';
import type { Warning } from '../results/warning.ts';
import { listOf } from '../words/list-of.ts';
import { percent } from '../words/percent.ts';
import { rearFirstShares } from './warnings/rear-first.ts';

interface DangerWordsInput {
  readonly warnings: readonly Warning[];
  readonly setUps: readonly SetUpPrediction[];
}

/** What is dangerous, and about whom and when; the worst first. */
const dangers: readonly (readonly [
  what: string,
  codes: Readonly<Record<string, (setUp: SetUpPrediction) => string>>,
])[] = [
  ['the car no longer comes to rest in the repeated stops', { 'car-does-not-stop': () => '' }],
  [
    'the pedal reaches the floor',
    {
      'pedal-bottoms': () => '',
      'pedal-may-bottom': ({ pedalBottomsShare }) => ` in ${percent(pedalBottomsShare)} of the draws`,
    },
  ],
  [
    'the rear wheels lock first',
    {
      'rear-locks-first': () => '',
      'rear-locks-first-hot': ({ balance, repeatedStops }) =>
        ` from stop ${balance.rearFirstFromStop ?? 1} of ${repeatedStops.length} on`,
      'rear-may-lock-first': (setUp) => ` in ${percent(mostShare(setUp))} of the draws`,
    },
  ],
  [
    'the fluid boils in the repeated stops or after them',
    {
      'fluid-boils': () => '',
      'fluid-may-boil': ({ fluid }) => ` in ${percent(fluid?.boilsShare ?? 0)} of the draws`,
    },
  ],
  ['the rotors get hotter than can be computed', { 'rotor-beyond-computing': () => '' }],
  ['the car does not come to rest in some draws', { 'car-may-not-stop': () => '' }],
];

/** Dangers and what may become one, in as few words as they take; what is alike is told once. */
export function dangerWords({ warnings, setUps }: DangerWordsInput): string[] {
  const loud = warnings.filter(({ severity }) => severity === 'danger');
  const clauses = dangers.flatMap(([what, codes]) => {
    const whom = Object.entries(codes).flatMap(([code, when]) => {
      const ids = new Set(loud.filter((warning) => warning.code === code).map(({ about }) => about));
      const found = setUps.filter(({ id }) => ids.has(id));
      return grouped(found, setUps.length, when);
    });
    return whom.length === 0 ? [] : [`${what} ${whom.join(', ')}`];
  });
  const maybe = setUps.filter(
    (setUp) =>
      !loud.some(({ about, code }) => about === setUp.id && code.startsWith('rear-')) &&
      mostShare(setUp) >= rearFirstShares.word,
  );
  const named = maybe.map((setUp) => `"${setUp.title}" (${percent(mostShare(setUp))})`);
  return [
    ...(clauses.length === 0 ? [] : [`DANGER: ${clauses.join('; ')}.`]),
    ...(named.length === 0 ? [] : [`Possible rear-first lock: ${listOf(named)}.`]),
  ];
}

function mostShare({ balance }: SetUpPrediction): number {
  return Math.max(balance.rearFirstShare, balance.rearFirstShareHot ?? 0);
}

/** `with "A" and "B" from stop 4 of 8 on`: what is alike is told once. */
function grouped(
  setUps: readonly SetUpPrediction[],
  all: number,
  when: (setUp: SetUpPrediction) => string,
): string[] {
  const alike = new Map<string, string[]>();
  for (const setUp of setUps) {
    const words = when(setUp);
    alike.set(words, [...(alike.get(words) ?? []), `"${setUp.title}"`]);
  }
  return [...alike].map(([words, titles]) => {
    const whom = all > 2 && titles.length === all ? 'every set-up' : listOf(titles);
    return `with ${whom}${words}`;
  });
}
