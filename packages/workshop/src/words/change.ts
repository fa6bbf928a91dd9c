import type { Estimate } from '../results/estimate.ts';

/** What an interval of a change lets one say; sizes are positive. */
export type Change =
  /** The whole interval is on one side of zero, and more than a trifle away from it. */
  | { readonly kind: 'less' | 'more'; readonly least: number; readonly most: number }
  /** From a trifle either way to more than that on one side. */
  | { readonly kind: 'perhaps-less' | 'perhaps-more'; readonly most: number }
  /** The whole interval is a trifle. */
  | { readonly kind: 'none' }
  /** More than a trifle on both sides of zero. */
  | { readonly kind: 'open' };

/**
 * Says what an interval of a change lets one say: never more than both of its ends.
 *
 * @param change - with the change with its 95 % interval, any unit
 * @param trifle - size under which nobody would notice, in the unit of the change
 * @returns the kind of change; sizes in the unit of the change
 */
export function changeOf({ low, high }: Pick<Estimate, 'low' | 'high'>, trifle: number): Change {
  if (low >= -trifle && high <= trifle) return { kind: 'none' };
  if (high < -trifle) return { kind: 'less', least: -high, most: -low };
  if (low > trifle) return { kind: 'more', least: low, most: high };
  if (high <= trifle) return { kind: 'perhaps-less', most: -low };
  if (low >= -trifle) return { kind: 'perhaps-more', most: high };
  return { kind: 'open' };
}
