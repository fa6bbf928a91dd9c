import { CompiledQuery, SqliteDialect, SqliteDriver } from 'kysely';
import type { DatabaseConnection, Driver, SqliteDialectConfig } from 'kysely';

/** Takes the write lock when a transaction starts, so that it can't fail half-way because another writer was faster. */
class ImmediateSqliteDriver extends SqliteDriver {
  override async beginTransaction(connection: DatabaseConnection): Promise<void> {
    await connection.executeQuery(CompiledQuery.raw('begin immediate'));
  }
}

/** The query layer's SQLite dialect with `begin immediate` in place of `begin`. */
export class ImmediateSqliteDialect extends SqliteDialect {
  readonly #settings: SqliteDialectConfig;

  constructor(settings: SqliteDialectConfig) {
    super(settings);
    this.#settings = settings;
  }

  override createDriver(): Driver {
    return new ImmediateSqliteDriver(this.#settings);
  }
}
