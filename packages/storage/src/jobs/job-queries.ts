import type { Kysely, Transaction } from 'kysely';
import type { JobSummary, StoredJob } from '@standstill/workshop';
import type { Tables } from '../tables.ts';

type JobRow = {
  id: string;
  title: string;
  version: number;
  created_at: string;
  changed_at: string;
};

/**
 * @param database - an open database or transaction
 * @returns every job at its present version, newest change first
 */
export async function selectJobs(database: Kysely<Tables>): Promise<readonly JobSummary[]> {
  const rows = await presentVersions(database)
    .orderBy('job_version.changed_at', 'desc')
    .orderBy('job.id')
    .execute();
  return rows.map(jobSummary);
}

/**
 * @param database - an open database or transaction
 * @param id - the job's id
 * @returns the job at its present version; null where there is none
 */
export async function selectJob(database: Kysely<Tables>, id: string): Promise<StoredJob | null> {
  const query = presentVersions(database).select('job_version.document').where('job.id', '=', id);
  const row = await query.executeTakeFirst();
  return row === undefined ? null : storedJob(row);
}

/**
 * @param database - an open database or transaction
 * @param id - the job's id
 * @returns every version of the job, oldest first; none where there is no job
 */
export async function selectJobVersions(database: Kysely<Tables>, id: string): Promise<readonly StoredJob[]> {
  const rows = await database
    .selectFrom('job_version')
    .innerJoin('job', 'job.id', 'job_version.job_id')
    .select([
      'job.id',
      'job.created_at',
      'job_version.title',
      'job_version.version',
      'job_version.changed_at',
    ])
    .select('job_version.document')
    .where('job.id', '=', id)
    .orderBy('job_version.version')
    .execute();
  return rows.map(storedJob);
}

/**
 * @param transaction - the transaction that also makes the job's row
 * @param row - one version of the document
 */
export async function insertJobVersion(
  transaction: Transaction<Tables>,
  row: Tables['job_version'],
): Promise<void> {
  await transaction.insertInto('job_version').values(row).execute();
}

function presentVersions(database: Kysely<Tables>) {
  return database
    .selectFrom('job')
    .innerJoin('job_version', (join) =>
      join.onRef('job_version.job_id', '=', 'job.id').onRef('job_version.version', '=', 'job.version'),
    )
    .select([
      'job.id',
      'job.created_at',
      'job_version.title',
      'job_version.version',
      'job_version.changed_at',
    ]);
}

function jobSummary(row: JobRow): JobSummary {
  const { id, title, version, created_at: createdAt, changed_at: changedAt } = row;
  return { id, title, version, createdAt, changedAt };
}

function storedJob(row: JobRow & { document: string }): StoredJob {
  const document: unknown = JSON.parse(row.document);
  return { ...jobSummary(row), document };
}
