import type { Transaction } from 'kysely';
import type { Store } from '@standstill/workshop';
import type { Tables } from '../tables.ts';
import { insertJobVersion, selectJob } from './job-queries.ts';

/** A new version of a job's document, and the version that its author saw. */
export interface JobReplacement {
  readonly id: string;
  readonly expectedVersion: number;
  readonly title: string;
  readonly document: unknown;
  readonly at: string;
}

/**
 * Replaces a job's document where the author saw the version that stands. The update of the job's row decides: of two
 * writers with the same expectation, the second finds no such row.
 *
 * @param transaction - one transaction for both rows
 * @param replacement - the new version; its texts are known to be storable
 * @returns what the port's `replaceJob` answers
 */
export async function replaceJob(
  transaction: Transaction<Tables>,
  { id, expectedVersion, title, document, at }: JobReplacement,
): ReturnType<Store['replaceJob']> {
  const version = expectedVersion + 1;
  const updated = await transaction
    .updateTable('job')
    .set({ version })
    .where('id', '=', id)
    .where('version', '=', expectedVersion)
    .executeTakeFirstOrThrow();
  const replaced = updated.numUpdatedRows === 1n;
  if (replaced) {
    const row = { job_id: id, version, title, document: JSON.stringify(document), changed_at: at };
    await insertJobVersion(transaction, row);
  }
  const job = await selectJob(transaction, id);
  if (job === null) return { kind: 'missing' };
  return { kind: replaced ? 'replaced' : 'conflict', job };
}
