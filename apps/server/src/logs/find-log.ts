import type { LogSummary, Store } from '@standstill/workshop';
import { findJob } from '../jobs/find-job.ts';
import { RequestRefusal } from '../problems/request-refusal.ts';

/**
 * @param store - where logs are kept
 * @param jobId - the job's id
 * @param logId - the log's id
 * @returns the log and its bytes
 * @throws RequestRefusal `job-not-found` or `log-not-found`
 */
export async function findLog(
  store: Store,
  jobId: string,
  logId: string,
): Promise<{ readonly log: LogSummary; readonly bytes: Uint8Array }> {
  const found = await store.getLog(jobId, logId);
  if (found !== null) return found;
  await findJob(store, jobId);
  throw new RequestRefusal('log-not-found', `The job has no log with the id ${logId.slice(0, 80)}.`);
}
