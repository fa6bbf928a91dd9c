import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startPostgresServer } from '../../../tests/postgres-server.ts';
import type { PostgresServer } from '../../../tests/postgres-server.ts';

/** One engine to run the same tests on. */
export interface EngineUnderTest {
  readonly name: 'sqlite' | 'postgresql';
  /** Answers the address of a new, empty database. */
  newAddress(): Promise<string>;
  /** The server behind it, where it has one. */
  readonly server: PostgresServer | null;
  stop(): void;
}

/**
 * Starts both real engines; PostgreSQL is left out, with one line that says so, where it can't be had.
 *
 * @returns the engines; stop each one after the tests
 */
export async function enginesUnderTest(): Promise<readonly EngineUnderTest[]> {
  const server = await startPostgresServer();
  if (server === null) return [sqliteUnderTest()];
  const postgresql: EngineUnderTest = {
    name: 'postgresql',
    newAddress: () => server.createDatabase(),
    server,
    stop: () => server.stop(),
  };
  return [sqliteUnderTest(), postgresql];
}

function sqliteUnderTest(): EngineUnderTest {
  const folder = mkdtempSync(join(tmpdir(), 'standstill-sqlite-'));
  let count = 0;
  return {
    name: 'sqlite',
    newAddress: () => Promise.resolve(join(folder, `store-${(count += 1)}`)),
    server: null,
    stop: () => rmSync(folder, { recursive: true, force: true }),
  };
}
