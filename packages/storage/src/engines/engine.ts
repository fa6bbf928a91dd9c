import type { Kysely, Transaction } from 'kysely';
import type { Tables } from '../tables.ts';

/** What the two databases do differently. Everything else is one query layer over both. */
export interface Engine {
  readonly name: 'sqlite' | 'postgresql';

  /** Runs queries that change nothing. */
  read<Result>(work: (database: Kysely<Tables>) => Promise<Result>): Promise<Result>;

  /** Runs queries in one transaction: durable when the promise resolves, undone whole when it rejects. */
  write<Result>(work: (transaction: Transaction<Tables>) => Promise<Result>): Promise<Result>;

  /** Holds off other programs that want to migrate, until the transaction ends. */
  holdMigrations(transaction: Transaction<Tables>): Promise<void>;

  close(): Promise<void>;
}
