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

/** m, half a width that prints whole feet or tenths of a meter: a budget is known no better, and no better than 2 %. */
const wholeFeet = 0.6;
/** How many effects a sentence names; the table has all. */
const named = 2;

/** Where the feet go, in one sentence: the least there is, and the one or two largest effects. */
export function budgetSentence({ budget, title, speed, units }: BudgetSentenceInput): string {
  const say = speaker(units);
  const feet = (value: number): string => {
    if (value < trifles.distance / 2) return `under ${say.rough(trifles.distance, 'stopping-distance')}`;
    const half = Math.max(wholeFeet, value / 50);
    return say.central({ value, low: value - half, high: value + half }, 'stopping-distance');
  };
  const start = `${title}: of ${feet(budget.total_m)} from ${say.plain(speed, 'speed')}, ${feet(budget.ideal_m)} are the least that these tires allow`;
  const told = budget.shares
    .filter(({ distance_m }) => distance_m >= trifles.distance)
    .toSorted((a, b) => b.distance_m - a.distance_m)
    .slice(0, named);
  if (told.length === 0) return `${start}; the rest is spread too thin to name.`;
  const parts = told.map(({ title: effect, distance_m }) => `${lowered(effect)} (${feet(distance_m)})`);
  return `${start}; the rest is mostly ${listOf(parts)}.`;
}
