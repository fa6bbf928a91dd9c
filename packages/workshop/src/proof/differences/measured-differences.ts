import type { Speaker } from '../../words/speaker.ts';
import type { RunSet } from '../sets/run-set.ts';
import type { Difference } from './difference.ts';
import { conditionOf, measuredConditions } from './measured-condition.ts';

/** A set that stands for the old set-up, and how much of it: two sets with half each mean the moment between them. */
export interface WeightedSet {
  readonly set: RunSet;
  readonly weight: number;
}

/**
 * What differs in numbers between the old set-up and the new one: wind and temperatures that are far apart.
 *
 * @param old - the set before, or several that stand for it by their weights
 * @param after - the set after
 * @param say - printer of the unit system
 * @returns one for each condition that is known of all sets and lies far apart
 */
export function measuredDifferences(
  old: readonly WeightedSet[],
  after: RunSet,
  say: Speaker,
): readonly Difference[] {
  return measuredConditions.flatMap(({ key, title, kind, far }) => {
    const then = weighted(old.map(({ set, weight }) => ({ value: conditionOf(set, key), weight })));
    const now = conditionOf(after, key);
    if (then === null || now === null || Math.abs(now - then) < far) return [];
    return [{ key, text: `${title}: ${say.plain(then, kind)} before, ${say.plain(now, kind)} after` }];
  });
}

function weighted(
  parts: readonly { readonly value: number | null; readonly weight: number }[],
): number | null {
  let sum = 0;
  for (const { value, weight } of parts) {
    if (value === null) return null;
    sum += weight * value;
  }
  return sum;
}
