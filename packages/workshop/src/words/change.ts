import type { Estimate } from '../results/estimate.ts';

/** What an interval of a change lets one say. */
export type Change =
  /** The whole interval is on one side of zero, and more than a trifle. */
  | { readonly kind: 'less' | 'more'; readonly least: number; readonly most: number }
  /** The whole interval is a trifle. */
  | { readonly kind: 'none' }
  /** The interval holds zero and more than a trifle beside it. */
  | { readonly kind: 'open'; readonly less: number; readonly more: number };

/**
 * Says what an interval of a change lets one say: never more than both of its ends.
 *
 * @param change - with the change with its 95 % interval, any unit
 * @param trifle - size under which nobody would notice, in the unit of the change
 * @returns less, more, nothing, or that it can't be told; sizes are positive, in the unit of the change
 */
export function changeOf({ low, high }: Estimate, trifle: number): Change {
  if (Math.abs(low) <= trifle && Math.abs(high) <= trifle) return { kind: 'none' };
  if (high < 0) return { kind: 'less', least: -high, most: -low };
  if (low > 0) return { kind: 'more', least: low, most: high };
  return { kind: 'open', less: Math.max(0, -low), more: Math.max(0, high) };
}
