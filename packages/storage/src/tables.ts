/** One row for each job: which version of its document stands. */
export interface JobTable {
  readonly id: string;
  readonly version: number;
  readonly created_at: string;
}

/** Every version of every job document ever kept. The document is JSON text, so that it comes back as it went in. */
export interface JobVersionTable {
  readonly job_id: string;
  readonly version: number;
  readonly title: string;
  readonly document: string;
  readonly changed_at: string;
}

/** What is known about a log without reading its bytes. */
export interface LogTable {
  readonly id: string;
  readonly job_id: string;
  readonly name: string;
  readonly byte_count: number;
  readonly sha256: string;
  readonly added_at: string;
}

/** The bytes of a log in pieces, so that neither engine has to hold a large one twice in a single value. */
export interface LogPieceTable {
  readonly log_id: string;
  readonly position: number;
  readonly content: Uint8Array;
}

/** Which migrations have run, and the checksum of what they ran. */
export interface SchemaMigrationTable {
  readonly number: number;
  readonly name: string;
  readonly checksum: string;
  readonly applied_at: string;
}

/** The tables as the query layer sees them, the same on both engines. */
export interface Tables {
  readonly job: JobTable;
  readonly job_version: JobVersionTable;
  readonly log: LogTable;
  readonly log_piece: LogPieceTable;
  readonly schema_migration: SchemaMigrationTable;
}
