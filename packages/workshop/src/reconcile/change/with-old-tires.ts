import type { Job, JobSetUp } from '../../job/job.ts';

export interface OnOldTires {
  /** The job, with one set-up more where tires changed with the brakes. */
  readonly job: Job;
  /** The set-up after on the tires of the one before; the set-up after itself where they are the same. */
  readonly brakesAlone: JobSetUp | null;
}

/**
 * Gives a job the set-up that only the brakes of another make: its tires stay what they were.
 *
 * @param job - the job
 * @param before - whose tires stay
 * @param after - whose brakes are asked about; null where there is none
 * @returns the job and that set-up
 */
export function withOldTires(job: Job, before: JobSetUp, after: JobSetUp | null): OnOldTires {
  if (after === null) return { job, brakesAlone: null };
  const { frontTire, rearTire } = before.slots;
  if (after.slots.frontTire === frontTire && after.slots.rearTire === rearTire)
    return { job, brakesAlone: after };
  const brakesAlone: JobSetUp = {
    ...after,
    id: `${after.id} on the tires of ${before.id}`,
    slots: { ...after.slots, frontTire, rearTire },
  };
  return { job: { ...job, setUps: [...job.setUps, brakesAlone] }, brakesAlone };
}
