import type { Job } from '../../job/job.ts';
import type { PlacedLog } from './placed-log.ts';

/** Set-ups that a person asks about; by the runs where absent. */
export interface AskedSetUps {
  readonly before?: string;
  readonly after?: string;
}

/** Set-ups before and after; null where nothing tells. */
export interface ChosenSetUps {
  readonly against: string | null;
  readonly setUp: string | null;
}

/**
 * Which set-ups stand before and after a change: as asked, else as the runs with those roles say, else the car as found
 * against the only other set-up that was driven or, where none was, that the job has.
 *
 * @param job - the job
 * @param logs - its logs with their runs
 * @param asked - ids that a person asks about
 * @returns both ids; null where several are possible
 */
export function chosenChange(job: Job, logs: readonly PlacedLog[], asked: AskedSetUps): ChosenSetUps {
  const ofRole = (role: 'before' | 'after'): readonly string[] =>
    logs.flatMap((log) => (log.role === role && log.run !== null ? [log.run.setUp] : []));
  const without = logs.flatMap(({ role, run }) => (role === undefined && run !== null ? [run.setUp] : []));
  const found = job.setUps.find(({ basedOn }) => basedOn === null)?.id ?? null;
  const against = asked.before ?? theOnly(ofRole('before')) ?? found;
  const setUp =
    asked.after ??
    theOnly(ofRole('after')) ??
    theOnly(without.filter((id) => id !== against)) ??
    theOnly(job.setUps.flatMap(({ id }) => (id === against ? [] : [id])));
  return { against, setUp };
}

function theOnly(ids: readonly string[]): string | null {
  return new Set(ids).size === 1 ? (ids[0] ?? null) : null;
}
