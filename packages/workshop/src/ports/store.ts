/**
 * Where jobs and logs are kept. Two engines stand behind it (`@standstill/storage`); one contract suite holds both to
 * every sentence below. Every write is durable when its promise resolves.
 */
export interface Store {
  /** Newest change first. */
  listJobs(): Promise<readonly JobSummary[]>;
  getJob(id: string): Promise<StoredJob | null>;
  /** Version 1. Refuses an id that exists with `{ kind: 'exists' }`. */
  createJob(job: NewJob): Promise<{ kind: 'created'; job: StoredJob } | { kind: 'exists' }>;
  /** Replaces the document where `expectedVersion` is the present one; else says which version stands. */
  replaceJob(
    id: string,
    expectedVersion: number,
    document: unknown,
    title: string,
    at: string,
  ): Promise<
    { kind: 'replaced'; job: StoredJob } | { kind: 'conflict'; job: StoredJob } | { kind: 'missing' }
  >;
  /** Every version ever kept, oldest first: nothing typed is lost. */
  listJobVersions(id: string): Promise<readonly StoredJob[]>;
  /** Keeps the bytes as they are. The same bytes for the same job are kept once and give the same id back. */
  addLog(
    log: NewLog,
  ): Promise<{ kind: 'added' | 'already-there'; log: LogSummary } | { kind: 'missing-job' }>;
  listLogs(jobId: string): Promise<readonly LogSummary[]>;
  getLog(jobId: string, logId: string): Promise<{ log: LogSummary; bytes: Uint8Array } | null>;
  /** Which migrations have run: for the health page. */
  schemaVersion(): Promise<number>;
  readonly engine: 'sqlite' | 'postgresql';
  close(): Promise<void>;
}

export interface JobSummary {
  readonly id: string;
  readonly title: string;
  /** Counts up by one with each change; the ETag. */
  readonly version: number;
  /** ISO 8601, UTC. */
  readonly createdAt: string;
  readonly changedAt: string;
}

export interface StoredJob extends JobSummary {
  /** The job document as JSON. */
  readonly document: unknown;
}

export interface NewJob {
  readonly id: string;
  readonly title: string;
  readonly document: unknown;
  readonly at: string;
}

export interface LogSummary {
  readonly id: string;
  readonly jobId: string;
  readonly name: string;
  readonly bytes: number;
  /** Hex SHA-256 of the bytes. */
  readonly sha256: string;
  readonly addedAt: string;
}

export interface NewLog {
  readonly id: string;
  readonly jobId: string;
  readonly name: string;
  readonly content: Uint8Array;
  readonly sha256: string;
  readonly at: string;
}
