import type { Speaker } from '../../words/speaker.ts';
import { recordingDifferences } from './recording-differences.ts';
import type { RunSet } from '../sets/run-set.ts';
import type { Difference } from './difference.ts';
import { measuredDifferences } from './measured-differences.ts';
import type { WeightedSet } from './measured-differences.ts';
import { wordedDifferences } from './worded-differences.ts';

/**
 * What was different between the old set-up and the new one besides the set-up, by the words of the runs, by what was
 * written down or recorded in numbers, and by how the logs were recorded. Each kind is told once.
 *
 * @param old - the set before, or several that stand for it by their weights; those of no weight don't count
 * @param after - the set after
 * @param say - printer of the unit system
 * @returns the differences, those in words first
 */
export function differencesOf(
  old: readonly WeightedSet[],
  after: RunSet,
  say: Speaker,
): readonly Difference[] {
  const counting = old.filter(({ weight }) => weight > 0);
  const all = [
    ...counting.flatMap(({ set }) => wordedDifferences(set, after)),
    ...measuredDifferences(counting, after, say),
    ...counting.flatMap(({ set }) => recordingDifferences(set, after)),
  ];
  return all.filter(({ key }, index) => all.findIndex((one) => one.key === key) === index);
}
