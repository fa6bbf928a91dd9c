import type { Kysely, Selectable } from 'kysely';
import type { LogSummary } from '@standstill/workshop';
import type { Tables } from '../tables.ts';

/**
 * @param database - an open database or transaction
 * @param jobId - the job's id
 * @returns the job's logs in the order they were added
 */
export async function selectLogs(database: Kysely<Tables>, jobId: string): Promise<readonly LogSummary[]> {
  const rows = await database
    .selectFrom('log')
    .selectAll()
    .where('job_id', '=', jobId)
    .orderBy('added_at')
    .orderBy('name')
    .orderBy('id')
    .execute();
  return rows.map(logSummary);
}

/**
 * @param database - an open database or transaction
 * @param key - the job's id, and either the log's id or the SHA-256 of its bytes
 * @returns the log; null where the job has none such
 */
export async function selectLog(
  database: Kysely<Tables>,
  key: { readonly jobId: string; readonly column: 'id' | 'sha256'; readonly value: string },
): Promise<LogSummary | null> {
  const row = await database
    .selectFrom('log')
    .selectAll()
    .where('job_id', '=', key.jobId)
    .where(key.column, '=', key.value)
    .executeTakeFirst();
  return row === undefined ? null : logSummary(row);
}

function logSummary(row: Selectable<Tables['log']>): LogSummary {
  const { id, job_id: jobId, name, byte_count: bytes, sha256, added_at: addedAt } = row;
  return { id, jobId, name, bytes, sha256, addedAt };
}
