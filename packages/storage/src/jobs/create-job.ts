import type { Transaction } from 'kysely';
import type { NewJob, Store } from '@standstill/workshop';
import type { Tables } from '../tables.ts';
import { insertJobVersion, selectJob } from './job-queries.ts';

/**
 * Keeps a new job as version 1, or says that its id is taken.
 *
 * @param transaction - one transaction for both rows
 * @param job - the job; its texts are known to be storable
 * @returns what the port's `createJob` answers
 */
export async function createJob(
  transaction: Transaction<Tables>,
  job: NewJob,
): ReturnType<Store['createJob']> {
  const inserted = await transaction
    .insertInto('job')
    .values({ id: job.id, version: 1, created_at: job.at })
    .onConflict((conflict) => conflict.column('id').doNothing())
    .executeTakeFirstOrThrow();
  if (inserted.numInsertedOrUpdatedRows !== 1n) return { kind: 'exists' };
  await insertJobVersion(transaction, {
    job_id: job.id,
    version: 1,
    title: job.title,
    document: JSON.stringify(job.document),
    changed_at: job.at,
  });
  const stored = await selectJob(transaction, job.id);
  if (stored === null) throw new Error(`job ${job.id} was not kept`);
  return { kind: 'created', job: stored };
}
