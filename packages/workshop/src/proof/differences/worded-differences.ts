import type { JobRun } from '../../job/job.ts';
import { runsOf } from '../sets/run-set.ts';
import type { RunSet } from '../sets/run-set.ts';
import type { Difference } from './difference.ts';

/** What runs say in words. */
export const wordedKeys = ['date', 'tires', 'surface', 'driver', 'logger', 'direction'] as const;

export type WordedKey = (typeof wordedKeys)[number];

/**
 * What differs between two sets by the words of their runs.
 *
 * @param before - the first set
 * @param after - the second
 * @returns one for each difference; none where one side says nothing of it
 */
export function wordedDifferences(before: RunSet, after: RunSet): readonly Difference[] {
  return wordedKeys.flatMap((key) => {
    const [a, b] = [saidOf(runsOf(before), key), saidOf(runsOf(after), key)];
    return a === b || a === '' || b === '' ? [] : [{ key, text: `${key}: ${a} before, ${b} after` }];
  });
}

/** What runs say of one thing, each word once. */
export function saidOf(runs: readonly JobRun[], key: WordedKey): string {
  const words = [...new Set(runs.flatMap((run) => run[key] ?? []))];
  return (key === 'direction' ? words.toSorted().reverse() : words).join(', ');
}
