import { afterAll, describe, expect, test } from 'vitest';
import { sql } from 'kysely';
import { postgresEngine } from '../engines/postgres-engine.ts';
import type { Engine } from '../engines/engine.ts';
import { sqliteEngine } from '../engines/sqlite-engine.ts';
import { enginesUnderTest } from '../engines-under-test.testing.ts';
import { openStore } from '../open-store.ts';
import { applyMigrations } from './apply-migrations.ts';
import type { Migration } from './migration.ts';
import { migrations } from './migrations.ts';

const engines = await enginesUnderTest();
afterAll(() => {
  for (const engine of engines) engine.stop();
});

const both = (statements: readonly string[]): Migration['statements'] => ({
  sqlite: statements,
  postgresql: statements,
});
const first: Migration = {
  number: 1,
  name: 'first',
  statements: both(['create table first_table (id integer)']),
};
const second: Migration = {
  number: 2,
  name: 'second',
  statements: both(['create table second_table (id integer)', 'insert into first_table (id) values (7)']),
};

/** Names of the tables that are there, ours or not. */
async function tables(engine: Engine): Promise<string[]> {
  const source =
    engine.name === 'sqlite'
      ? sql<{ name: string }>`select name from sqlite_master where type = 'table'`
      : sql<{
          name: string;
        }>`select table_name as name from information_schema.tables where table_schema = 'public'`;
  const { rows } = await engine.read((database) => source.execute(database));
  return rows.map(({ name }) => name).sort();
}

async function applied(engine: Engine): Promise<number[]> {
  const rows = await engine.read((database) =>
    database.selectFrom('schema_migration').select('number').orderBy('number').execute(),
  );
  return rows.map(({ number }) => number);
}

describe.each(engines)('migrations on $name', (underTest) => {
  const { name } = underTest;
  const open = (address: string): Engine =>
    name === 'sqlite' ? sqliteEngine(address) : postgresEngine(address);
  const fresh = async (): Promise<Engine> => open(await underTest.newAddress());

  test('run in order, once each', async () => {
    const engine = await fresh();
    await applyMigrations(engine, [first]);
    await applyMigrations(engine, [first, second]);
    await applyMigrations(engine, [first, second]);
    expect(await applied(engine)).toEqual([1, 2]);
    const { rows } = await engine.read((database) =>
      sql<{ id: number }>`select id from first_table`.execute(database),
    );
    expect(rows).toEqual([{ id: 7 }]);
    await engine.close();
  });

  test('one that fails leaves nothing behind, and those before it stay', async () => {
    const engine = await fresh();
    const broken: Migration = {
      ...second,
      statements: both([...second.statements[name], 'create table broken (']),
    };
    await expect(applyMigrations(engine, [first, broken])).rejects.toMatchObject({
      code: 'store-migration-failed',
    });
    expect(await tables(engine)).toEqual(['first_table', 'schema_migration']);
    expect(await applied(engine)).toEqual([1]);
    const { rows } = await engine.read((database) => sql`select id from first_table`.execute(database));
    expect(rows).toEqual([]);
    await applyMigrations(engine, [first, second]);
    expect(await applied(engine)).toEqual([1, 2]);
    await engine.close();
  });

  test('a database that is newer than the program is refused and not touched', async () => {
    const engine = await fresh();
    await applyMigrations(engine, [first, second]);
    await expect(applyMigrations(engine, [first])).rejects.toMatchObject({
      code: 'store-newer-than-program',
      message: expect.stringContaining('Start a newer program') as string,
    });
    expect(await applied(engine)).toEqual([1, 2]);
    await engine.close();
  });

  test('a database that was migrated by other statements is refused', async () => {
    const engine = await fresh();
    await applyMigrations(engine, [first]);
    const changed: Migration = {
      ...first,
      statements: both(['create table first_table (id integer, more integer)']),
    };
    await expect(applyMigrations(engine, [changed, second])).rejects.toMatchObject({
      code: 'store-migration-changed',
    });
    expect(await applied(engine)).toEqual([1]);
    await engine.close();
  });

  test('the store itself refuses a newer database', async () => {
    const address = await underTest.newAddress();
    const engine = open(address);
    await applyMigrations(engine, [
      ...migrations,
      { ...second, number: migrations.length + 1, statements: both([]) },
    ]);
    await engine.close();
    await expect(openStore({ address })).rejects.toMatchObject({ code: 'store-newer-than-program' });
  });

  test('programs that start at once run each migration once', async () => {
    const address = await underTest.newAddress();
    const starters = Array.from({ length: 4 }, () => open(address));
    await Promise.all(starters.map((engine) => applyMigrations(engine, [first, second])));
    const [engine] = starters;
    expect(engine && (await applied(engine))).toEqual([1, 2]);
    await Promise.all(starters.map((each) => each.close()));
  });
});

test('numbers count up from one without gaps', () => {
  expect(migrations.map(({ number }) => number)).toEqual(migrations.map((_, index) => index + 1));
});
