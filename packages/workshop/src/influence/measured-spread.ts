import { defaultSpread } from '../job/facts/default-spreads.ts';
import type { Known } from '../job/known.ts';

/** Share of its spread that measuring must take off a number to be advice (assumed). */
const worthwhile = 0.2;

/**
 * How well a number would be known after it is measured: the spread that the job gives to a measured value of its kind.
 *
 * @param known - the number as it is known now
 * @returns one standard deviation, SI; null where it is measured already, is a choice, or would hardly get surer
 */
export function measuredSpread({ fact, origin, value, spread }: Known): number | null {
  if (origin === 'measured' || fact.spread === 'chosen') return null;
  const after = defaultSpread(fact.spread, 'measured', value);
  return after <= (1 - worthwhile) * spread ? after : null;
}
