import type { NewJob, NewLog, Store } from '@standstill/workshop';
import type { Engine } from './engines/engine.ts';
import { StoreError } from './errors/store-error.ts';
import { createJob } from './jobs/create-job.ts';
import { selectJob, selectJobVersions, selectJobs } from './jobs/job-queries.ts';
import { replaceJob } from './jobs/replace-job.ts';
import { addLog } from './logs/add-log.ts';
import { selectPieces } from './logs/log-pieces.ts';
import { selectLog, selectLogs } from './logs/log-queries.ts';
import { sha256 } from './logs/sha256.ts';
import { isStorableText, storableText } from './storable-text.ts';

/**
 * The workshop's store over a relational engine whose migrations have run.
 *
 * @param engine - the open, migrated database; closed with the store
 * @returns the store
 */
export function relationalStore(engine: Engine): Store {
  return {
    engine: engine.name,
    listJobs: () => engine.read(selectJobs),
    getJob: async (id) => (isStorableText(id) ? engine.read((database) => selectJob(database, id)) : null),
    createJob: async (job) => {
      checkJob(job);
      return engine.write((transaction) => createJob(transaction, job));
    },
    replaceJob: async (id, expectedVersion, document, title, at) => {
      if (!isStorableText(id)) return { kind: 'missing' };
      checkJob({ id, title, at });
      const replacement = { id, expectedVersion, document, title, at };
      return engine.write((transaction) => replaceJob(transaction, replacement));
    },
    listJobVersions: async (id) =>
      isStorableText(id) ? engine.read((database) => selectJobVersions(database, id)) : [],
    addLog: async (log) => {
      if (!isStorableText(log.jobId)) return { kind: 'missing-job' };
      checkLog(log);
      return engine.write((transaction) => addLog(transaction, log));
    },
    listLogs: async (jobId) =>
      isStorableText(jobId) ? engine.read((database) => selectLogs(database, jobId)) : [],
    getLog: (jobId, logId) => readLog(engine, jobId, logId),
    schemaVersion: () => readSchemaVersion(engine),
    close: () => engine.close(),
  };
}

async function readLog(engine: Engine, jobId: string, logId: string): ReturnType<Store['getLog']> {
  if (!isStorableText(jobId) || !isStorableText(logId)) return null;
  return engine.read(async (database) => {
    const log = await selectLog(database, { jobId, column: 'id', value: logId });
    return log === null ? null : { log, bytes: await selectPieces(database, log) };
  });
}

async function readSchemaVersion(engine: Engine): Promise<number> {
  const row = await engine.read((database) =>
    database
      .selectFrom('schema_migration')
      .select((expression) => expression.fn.max('number').as('version'))
      .executeTakeFirstOrThrow(),
  );
  return Number(row.version ?? 0);
}

function checkJob(job: Pick<NewJob, 'id' | 'title' | 'at'>): void {
  storableText(job.id, 'id');
  storableText(job.title, 'title');
  storableText(job.at, 'time');
}

function checkLog(log: NewLog): void {
  storableText(log.id, 'id');
  storableText(log.name, 'name');
  storableText(log.at, 'time');
  if (sha256(log.content) === log.sha256) return;
  throw new StoreError(
    'store-hash-mismatch',
    `The bytes of ${log.name} are not those of the SHA-256 given with them.`,
  );
}
