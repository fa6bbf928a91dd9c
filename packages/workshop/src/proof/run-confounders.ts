import type { JobRun } from '../job/job.ts';
import { listOf } from '../words/list-of.ts';

const stated = ['date', 'tires', 'surface'] as const;

/**
 * What the job says was different between two sets of runs besides the set-up, and so can't be told from it.
 *
 * @param before - runs of the old set-up
 * @param after - runs of the new one
 * @returns one sentence for each: date, tires, surface; a fact that only one side states counts as not known to be alike
 */
export function runConfounders(before: readonly JobRun[], after: readonly JobRun[]): string[] {
  return stated.flatMap((key) => {
    const [a, b] = [said(before, key), said(after, key)];
    if (a === b) return [];
    return [`${key}: ${a === '' ? 'not stated' : a} before, ${b === '' ? 'not stated' : b} after`];
  });
}

function said(runs: readonly JobRun[], key: (typeof stated)[number]): string {
  return listOf([...new Set(runs.flatMap((run) => run[key] ?? []))].toSorted());
}
