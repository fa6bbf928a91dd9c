import type { UnitSystem } from '@standstill/units';
import { trifles } from '../predict/trifles.ts';
import type { Estimate } from '../results/estimate.ts';
import type { LimitsDifference } from '../results/limits-report.ts';
import { listOf } from '../words/list-of.ts';
import { lowered } from '../words/lowered.ts';
import { signedRange } from '../words/signed-range.ts';
import { speaker } from '../words/speaker.ts';

interface DifferenceSentenceInput {
  /** Of the set-up and of what it is set against. */
  readonly titles: readonly string[];
  readonly distance: Estimate;
  readonly byPart: LimitsDifference['byPart'];
  readonly units: UnitSystem;
}

/** How many parts a sentence names; the table has all. */
const named = 2;

/** Which part buys which feet, in one sentence. */
export function differenceSentence({ titles, distance, byPart, units }: DifferenceSentenceInput): string {
  const say = speaker(units);
  const [title = '', against = ''] = titles;
  const start = `${title} against ${against}: ${signedRange(distance, 'stopping-distance', say)}`;
  const told = byPart
    .filter(({ distance_m }) => Math.abs(distance_m.value) >= trifles.partDistance)
    .toSorted((a, b) => Math.abs(b.distance_m.value) - Math.abs(a.distance_m.value))
    .slice(0, named);
  if (told.length === 0) return `${start}; none of the changed parts moves the distance by itself.`;
  const parts = told.map(
    ({ title: part, distance_m }) =>
      `the ${lowered(part)} (${signedRange(distance_m, 'stopping-distance', say)})`,
  );
  return `${start}; most of it by ${listOf(parts)}.`;
}
