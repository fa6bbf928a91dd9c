import type { Transaction } from 'kysely';
import type { NewLog, Store } from '@standstill/workshop';
import type { Tables } from '../tables.ts';
import { insertPieces } from './log-pieces.ts';
import { selectLog } from './log-queries.ts';

/**
 * Keeps a log byte for byte, once for each job.
 *
 * @param transaction - one transaction for the row and its bytes
 * @param log - the log; its texts are known to be storable, its SHA-256 to be that of its bytes
 * @returns what the port's `addLog` answers
 */
export async function addLog(transaction: Transaction<Tables>, log: NewLog): ReturnType<Store['addLog']> {
  const job = await transaction.selectFrom('job').select('id').where('id', '=', log.jobId).executeTakeFirst();
  if (job === undefined) return { kind: 'missing-job' };
  const added = await insertLog(transaction, log);
  if (added) await insertPieces(transaction, log.id, log.content);
  const kept = await selectLog(transaction, { jobId: log.jobId, column: 'sha256', value: log.sha256 });
  if (kept === null) throw new Error(`log ${log.id} was not kept`);
  return { kind: added ? 'added' : 'already-there', log: kept };
}

async function insertLog(transaction: Transaction<Tables>, log: NewLog): Promise<boolean> {
  const { id, jobId, name, content, sha256, at } = log;
  const inserted = await transaction
    .insertInto('log')
    .values({ id, job_id: jobId, name, byte_count: content.length, sha256, added_at: at })
    .onConflict((conflict) => conflict.columns(['job_id', 'sha256']).doNothing())
    .executeTakeFirstOrThrow();
  return inserted.numInsertedOrUpdatedRows === 1n;
}
