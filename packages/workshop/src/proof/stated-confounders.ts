import type { RunDocument } from '../job/document/run-schema.ts';

/** What a run says of itself that changes a stop as much as brakes do. */
type Saying = Pick<RunDocument, 'tires' | 'surface' | 'date'>;

/**
 * What differs between two sets by the words of their runs, and so can't be told from the change of set-up.
 *
 * @param before - the runs of the first set
 * @param after - the runs of the second
 * @returns one text for each difference; none where one side says nothing of it
 * @example
 * statedConfounders([{ tires: 'old' }], [{ tires: 'new' }]) // => ['tires: old before, new after']
 */
export function statedConfounders(before: readonly Saying[], after: readonly Saying[]): readonly string[] {
  return (['tires', 'surface', 'date'] as const).flatMap((key) => {
    const [a, b] = [said(before, key), said(after, key)];
    return a === b || a === '' || b === '' ? [] : [`${key}: ${a} before, ${b} after`];
  });
}

function said(runs: readonly Saying[], key: keyof Saying): string {
  return [...new Set(runs.flatMap((run) => run[key] ?? []))].join(', ');
}
