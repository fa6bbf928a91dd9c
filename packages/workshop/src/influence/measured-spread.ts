import { defaultSpread } from '../job/facts/default-spreads.ts';
import type { Known } from '../job/known.ts';

/** How well a number would be known after it is measured once more. */
export interface MeasuredSpread {
  /** One standard deviation, SI. */
  readonly spread: number;
  /** True where it is measured already and the mean of two is taken. */
  readonly again: boolean;
}

/** Share of its spread that measuring must take off a number to be advice (assumed). */
const worthwhile = 0.2;

/**
 * Answers how well a number would be known after it is measured.
 *
 * Equation: the spread that the job gives to a measured value of its kind; of a value that is measured already,
 * s / √2, the mean of two measurements alike
 *
 * @param known - the number as it is known now
 * @returns the spread; null where the number is a choice, or would hardly get surer
 */
export function measuredSpread({ fact, origin, value, spread }: Known): MeasuredSpread | null {
  if (fact.spread === 'chosen') return null;
  if (origin === 'measured') return { spread: spread * Math.SQRT1_2, again: true };
  const after = defaultSpread(fact.spread, 'measured', value);
  return after <= (1 - worthwhile) * spread ? { spread: after, again: false } : null;
}
