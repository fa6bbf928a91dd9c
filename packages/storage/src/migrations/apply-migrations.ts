import { sql } from 'kysely';
import type { Transaction } from 'kysely';
import type { Engine } from '../engines/engine.ts';
import { StoreError } from '../errors/store-error.ts';
import type { Tables } from '../tables.ts';
import { migrationChecksum } from './migration-checksum.ts';
import type { Migration } from './migration.ts';

/**
 * Brings a database to this program's tables, one migration in one transaction, and refuses one that it would not
 * understand. Two programs that start at once on one database take turns.
 *
 * @param engine - the open database
 * @param migrations - this program's migrations, in order
 * @throws StoreError where the database is newer, was migrated by other statements, or a migration fails; a migration
 *   that fails leaves nothing behind
 */
export async function applyMigrations(engine: Engine, migrations: readonly Migration[]): Promise<void> {
  await engine.write((transaction) => prepare(engine, transaction, migrations));
  for (const migration of migrations)
    await engine.write((transaction) => applyOnce(engine, transaction, migration));
}

async function prepare(
  engine: Engine,
  transaction: Transaction<Tables>,
  migrations: readonly Migration[],
): Promise<void> {
  await engine.holdMigrations(transaction);
  await sql`create table if not exists schema_migration (
    number integer primary key,
    name text not null,
    checksum text not null,
    applied_at text not null
  )`.execute(transaction);
  const applied = await transaction.selectFrom('schema_migration').selectAll().orderBy('number').execute();
  for (const row of applied) refuseUnknown(row, migrations, engine.name);
}

function refuseUnknown(
  row: Tables['schema_migration'],
  migrations: readonly Migration[],
  engine: Engine['name'],
): void {
  const known = migrations.find((migration) => migration.number === row.number);
  if (known === undefined)
    throw new StoreError(
      'store-newer-than-program',
      `The database has step ${row.number} (${row.name}); this program knows ${migrations.length}. Start a newer program.`,
    );
  if (migrationChecksum(known, engine) !== row.checksum)
    throw new StoreError(
      'store-migration-changed',
      `Step ${row.number} (${row.name}) of the database is not the one in this program. Start the program that made it.`,
    );
}

async function applyOnce(
  engine: Engine,
  transaction: Transaction<Tables>,
  migration: Migration,
): Promise<void> {
  await engine.holdMigrations(transaction);
  const { number, name } = migration;
  const done = await transaction
    .selectFrom('schema_migration')
    .select('number')
    .where('number', '=', number)
    .executeTakeFirst();
  if (done !== undefined) return;
  await runStatements(engine, transaction, migration);
  const row = {
    number,
    name,
    checksum: migrationChecksum(migration, engine.name),
    applied_at: new Date().toISOString(),
  };
  await transaction.insertInto('schema_migration').values(row).execute();
}

async function runStatements(
  engine: Engine,
  transaction: Transaction<Tables>,
  migration: Migration,
): Promise<void> {
  try {
    for (const statement of migration.statements[engine.name]) await sql.raw(statement).execute(transaction);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    const message = `Step ${migration.number} (${migration.name}) of the database failed and was undone: ${reason}.`;
    throw new StoreError('store-migration-failed', message, error);
  }
}
