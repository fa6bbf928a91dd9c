import type { Store, StoredJob } from '@standstill/workshop';
import { RequestRefusal } from '../problems/request-refusal.ts';

/**
 * @param store - where jobs are kept
 * @param id - the job's id
 * @returns the job at its present version
 * @throws RequestRefusal `job-not-found`
 */
export async function findJob(store: Store, id: string): Promise<StoredJob> {
  const job = await store.getJob(id);
  if (job === null) throw jobNotFound(id);
  return job;
}

/**
 * @param id - an id that no job has
 * @returns the refusal
 */
export function jobNotFound(id: string): RequestRefusal {
  return new RequestRefusal('job-not-found', `No job has the id ${id.slice(0, 80)}.`);
}
