import type { UnitSystem } from '@standstill/units';
import type { StopBudgetResult } from '../results/prediction.ts';
import { listOf } from '../words/list-of.ts';
import { lowered } from '../words/lowered.ts';
import { speaker } from '../words/speaker.ts';
import { trifles } from './trifles.ts';

interface BudgetSentenceInput {
  readonly budget: Omit<StopBudgetResult, 'sentence'>;
  readonly title: string;
  /** m/s. */
  readonly speed: number;
  readonly units: UnitSystem;
}

/** Where the feet go, in one sentence. */
export function budgetSentence({ budget, title, speed, units }: BudgetSentenceInput): string {
  const say = speaker(units);
  const feet = (value: number): string => say.plain(Math.abs(value), 'stopping-distance');
  const sorted = budget.shares.toSorted((a, b) => Math.abs(b.distance_m) - Math.abs(a.distance_m));
  const told = sorted.filter(({ distance_m }) => Math.abs(distance_m) >= trifles.distance);
  const start = `${title}: of ${feet(budget.total_m)} from ${say.plain(speed, 'speed')}, ${feet(budget.ideal_m)} are the least that these tires allow`;
  if (told.length === 0) return `${start}; the rest is spread too thin to name.`;
  const parts = told.map(({ title: effect, distance_m }) => {
    const what = lowered(effect);
    return distance_m > 0 ? `${what} takes ${feet(distance_m)}` : `${what} gives back ${feet(distance_m)}`;
  });
  return `${start}; ${listOf(parts)}.`;
}
