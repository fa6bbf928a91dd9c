import { CompiledQuery, SqliteDialect, SqliteDriver } from 'kysely';
import type { DatabaseConnection, Driver } from 'kysely';
import type { KeptConnection } from './kept-connection.ts';

/** Takes the write lock when a transaction starts, so that it can't fail half-way because another writer was faster. */
class ImmediateSqliteDriver extends SqliteDriver {
  readonly #connection: KeptConnection;

  constructor(connection: KeptConnection) {
    super({ database: connection });
    this.#connection = connection;
  }

  override async beginTransaction(connection: DatabaseConnection): Promise<void> {
    await connection.executeQuery(CompiledQuery.raw('begin immediate'));
  }

  /** A full disk ends the transaction by itself; to roll it back again would hide that reason behind another. */
  override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    if (this.#connection.database.inTransaction) await super.rollbackTransaction(connection);
  }
}

/** The query layer's SQLite dialect with `begin immediate` in place of `begin`, and an end that keeps the reason. */
export class ImmediateSqliteDialect extends SqliteDialect {
  readonly #connection: KeptConnection;

  constructor(connection: KeptConnection) {
    super({ database: connection });
    this.#connection = connection;
  }

  override createDriver(): Driver {
    return new ImmediateSqliteDriver(this.#connection);
  }
}
