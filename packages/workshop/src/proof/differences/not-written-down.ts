import type { JobRun } from '../../job/job.ts';
import { listOf } from '../../words/list-of.ts';
import { runsOf } from '../sets/run-set.ts';
import type { RunSet } from '../sets/run-set.ts';

/** What moves a stop as much as brakes do, and only a person can tell. */
const asked: readonly (readonly [key: keyof JobRun, word: string])[] = [
  ['date', 'the day'],
  ['tires', 'the tires'],
  ['surface', 'the surface'],
];

/** What is known of neither or of one side only, in one sentence: nobody knows whether it differed. */
export function notWrittenDown(before: RunSet, after: RunSet): readonly string[] {
  const sides = [before, after].map(runsOf);
  if (sides.some((runs) => runs.length === 0))
    return [
      'Only the stops are known, not the day, the tires, the surface or the driver of each set: the difference holds all that changed, and is not yet that of the brakes. Write them into the runs of a job.',
    ];
  const open = asked.filter(([key]) =>
    sides.some((runs) => !runs.some((run) => run[key] !== undefined && run[key] !== '')),
  );
  if (open.length === 0) return [];
  const words = listOf(open.map(([, word]) => word));
  return [`The job does not say of both sides what ${words} were: nobody knows whether that differed.`];
}
