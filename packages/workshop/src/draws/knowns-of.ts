import type { Job } from '../job/job.ts';
import type { Known } from '../job/known.ts';
import { settle } from '../settle/settle.ts';

/** Every number that the set-ups use and that is not known exactly, each once: parts that they share are shared here. */
export function knownsOf(job: Job, setUpIds: readonly string[]): readonly Known[] {
  const found = new Map<string, Known>();
  for (const id of setUpIds) {
    settle(job, id, (known) => {
      if (known.spread > 0) found.set(known.path, known);
      return known.value;
    });
  }
  return [...found.values()];
}
