import type { QuantityKind } from '@standstill/units';
import type { Estimate } from '../results/estimate.ts';
import type { Speaker } from './speaker.ts';

/** A change in words, with no more digits than its interval supports. */
type Interval = Pick<Estimate, 'low' | 'high'>;

/**
 * An interval of a change in words: `3 to 9 ft shorter`, `2 ft shorter to 4 ft longer`.
 *
 * @param change - with its interval, SI
 * @param kind - what it measures
 * @param say - printer of the unit system
 * @returns the words
 */
export function signedRange(change: Interval, kind: QuantityKind, say: Speaker): string {
  const { low, high } = change;
  if (high <= 0) return `${say.range(-high, -low, kind)} shorter`;
  if (low >= 0) return `${say.range(low, high, kind)} longer`;
  return `${endOf(change, -low, kind, say)} shorter to ${endOf(change, high, kind, say)} longer`;
}

/**
 * One end of an interval by itself: `37 ft`.
 *
 * Assumes: from some hundred draws an end is known to a third of the half-width and better.
 *
 * @param change - the interval, SI
 * @param size - of the end, SI units of the kind, not below zero
 * @param kind - what it measures
 * @param say - printer of the unit system
 * @returns the end with its unit
 */
export function endOf({ low, high }: Interval, size: number, kind: QuantityKind, say: Speaker): string {
  const known = (high - low) / 6;
  return say.central({ value: size, low: size - known, high: size + known }, kind);
}
