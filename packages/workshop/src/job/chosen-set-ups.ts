import type { Job, JobSetUp } from './job.ts';

/** The set-ups as asked, else all with the car as found first. */
export function chosenSetUps(job: Job, ids: readonly string[] | undefined): readonly JobSetUp[] {
  if (ids === undefined)
    return job.setUps.toSorted((a, b) => Number(a.basedOn !== null) - Number(b.basedOn !== null));
  return ids.map((id) => {
    const found = job.setUps.find((setUp) => setUp.id === id);
    if (found === undefined) throw new RangeError(`the job has no set-up "${id}"`);
    return found;
  });
}
