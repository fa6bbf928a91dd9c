import { mkdirSync, realpathSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { Kysely } from 'kysely';
import { StoreError } from '../errors/store-error.ts';
import type { Tables } from '../tables.ts';
import type { Engine } from './engine.ts';
import { ImmediateSqliteDialect } from './immediate-sqlite-dialect.ts';
import { keptConnection, type KeptConnection } from './kept-connection.ts';
import { oneAtATime } from './one-at-a-time.ts';
import { sqliteTrouble } from './sqlite-trouble.ts';

/** How long a write waits for another program's write, ms. */
const busyTimeout = 5000;
const fileName = 'standstill.sqlite';

/**
 * Opens the database in this process. A commit is on the disk before its promise resolves: write-ahead log,
 * `synchronous = FULL`, and on systems that tell them apart the flush that reaches the platter.
 *
 * @param path - a folder, which gets a file `standstill.sqlite`, or a file that ends in `.sqlite` or `.db`
 * @returns the engine
 * @throws StoreError where the file can't be opened or is no database
 */
export function sqliteEngine(path: string): Engine {
  const file = databaseFile(path);
  try {
    const connection = openConnection(file);
    const database = new Kysely<Tables>({ dialect: new ImmediateSqliteDialect(connection) });
    return engineOn(database, realpathSync(file));
  } catch (error) {
    throw sqliteTrouble(error, file);
  }
}

function engineOn(database: Kysely<Tables>, file: string): Engine {
  const guarded = <Result>(work: Promise<Result>): Promise<Result> =>
    work.catch((error: unknown) => {
      throw sqliteTrouble(error, file);
    });
  return {
    name: 'sqlite',
    read: (work) => guarded(work(database)),
    write: (work) => guarded(oneAtATime(file, () => database.transaction().execute(work))),
    // `begin immediate` has the write lock already.
    holdMigrations: () => Promise.resolve(),
    close: () => database.destroy(),
  };
}

function openConnection(file: string): KeptConnection {
  const connection = keptConnection(new Database(file, { timeout: busyTimeout }));
  try {
    connection.database.exec('pragma journal_mode = WAL');
    connection.database.exec('pragma synchronous = FULL');
    connection.database.exec('pragma fullfsync = ON');
    connection.database.exec('pragma foreign_keys = ON');
    connection.database.exec('pragma trusted_schema = OFF');
    return connection;
  } catch (error) {
    connection.close();
    throw error;
  }
}

function databaseFile(path: string): string {
  const named = /\.(sqlite|db)$/i.test(path) && !isFolder(path);
  const file = named ? path : join(path, fileName);
  try {
    mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
  } catch (error) {
    throw new StoreError('store-unreachable', `The folder ${dirname(file)} can't be made.`, error);
  }
  return file;
}

function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
}
