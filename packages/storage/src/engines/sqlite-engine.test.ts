import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { sql } from 'kysely';
import { afterAll, describe, expect, test } from 'vitest';
import { openStore } from '../open-store.ts';
import { sqliteEngine } from './sqlite-engine.ts';
import { sqliteTrouble } from './sqlite-trouble.ts';

const folder = mkdtempSync(join(tmpdir(), 'standstill-sqlite-engine-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function pragma(address: string, name: string): Promise<unknown> {
  const engine = sqliteEngine(address);
  const { rows } = await engine.read((database) =>
    sql.raw<Record<string, unknown>>(`pragma ${name}`).execute(database),
  );
  await engine.close();
  return Object.values(rows[0] ?? {})[0];
}

describe('the database in this process', () => {
  test('flushes each commit, and holds rows to their references', async () => {
    const address = join(folder, 'settings');
    expect(await pragma(address, 'journal_mode')).toBe('wal');
    expect(await pragma(address, 'synchronous')).toBe(2);
    expect(await pragma(address, 'foreign_keys')).toBe(1);
    expect(await pragma(address, 'busy_timeout')).toBe(5000);
  });

  test('is a file in a folder, or the file that is named', async () => {
    const named = join(folder, 'deep', 'down', 'jobs.sqlite');
    await (await openStore({ address: named })).close();
    expect(readFileSync(named).subarray(0, 15).toString()).toBe('SQLite format 3');
    await (await openStore({ address: join(folder, 'deep') })).close();
    expect(
      readFileSync(join(folder, 'deep', 'standstill.sqlite'))
        .subarray(0, 15)
        .toString(),
    ).toBe('SQLite format 3');
  });

  test('is not made of a file that is something else', async () => {
    const file = join(folder, 'notes.db');
    writeFileSync(file, 'These are notes, not a database, and they are long enough to be one.'.repeat(20));
    await expect(openStore({ address: file })).rejects.toMatchObject({ code: 'store-not-a-database' });
    expect(readFileSync(file, 'utf8')).toMatch(/^These are notes/);
  });

  test('can not be where a file stands in the way', async () => {
    writeFileSync(join(folder, 'in-the-way'), '');
    await expect(openStore({ address: join(folder, 'in-the-way', 'deeper') })).rejects.toMatchObject({
      code: 'store-unreachable',
    });
    mkdirSync(join(folder, 'folder.sqlite', 'standstill.sqlite'), { recursive: true });
    await expect(openStore({ address: join(folder, 'folder.sqlite') })).rejects.toMatchObject({
      code: 'store-unreachable',
    });
  });

  test('that another program holds for too long says so and is whole afterwards', async () => {
    const address = join(folder, 'held');
    const store = await openStore({ address });
    const other = new Database(join(address, 'standstill.sqlite'));
    other.exec('begin immediate');
    const job = { id: 'a', title: 'A', document: {}, at: '2026-11-25T08:00:00.000Z' };
    await expect(store.createJob(job)).rejects.toMatchObject({ code: 'store-busy' });
    expect(await store.listJobs()).toEqual([]);
    other.exec('rollback');
    other.close();
    expect(await store.createJob(job)).toMatchObject({ kind: 'created' });
    await store.close();
  });

  test('that is full says so and changes nothing', async () => {
    const engine = sqliteEngine(join(folder, 'full'));
    await engine.write((transaction) => sql`create table heap (content blob)`.execute(transaction));
    await engine.read((database) => sql.raw('pragma max_page_count = 20').execute(database));
    const fill = engine.write((transaction) =>
      sql`insert into heap values (zeroblob(1000000))`.execute(transaction),
    );
    await expect(fill).rejects.toMatchObject({ code: 'store-full' });
    const { rows } = await engine.read((database) => sql`select * from heap`.execute(database));
    expect(rows).toEqual([]);
    await engine.close();
  });

  test('whose bytes were changed behind its back is not believed', async () => {
    const address = join(folder, 'damaged');
    const store = await openStore({ address });
    await store.createJob({ id: 'a', title: 'A', document: {}, at: '2026-11-25T08:00:00.000Z' });
    const content = new TextEncoder().encode('0.0,60.1\n');
    const sha256 = '99aee9f3d37aaff7ef4cb8f3bd2a8aad6d1c8a8a';
    await expect(
      store.addLog({ id: 'l', jobId: 'a', name: 'x.csv', content, sha256, at: '' }),
    ).rejects.toMatchObject({
      code: 'store-hash-mismatch',
    });
    const { createHash } = await import('node:crypto');
    const real = createHash('sha256').update(content).digest('hex');
    await store.addLog({ id: 'l', jobId: 'a', name: 'x.csv', content, sha256: real, at: '' });
    const other = new Database(join(address, 'standstill.sqlite'));
    other.exec(`update log_piece set content = x'00'`);
    other.close();
    await expect(store.getLog('a', 'l')).rejects.toMatchObject({ code: 'store-log-damaged' });
    await store.close();
  });
});

test.each([
  ['SQLITE_READONLY', 'store-read-only'],
  ['SQLITE_CORRUPT', 'store-not-a-database'],
  ['SQLITE_IOERR_FSYNC', 'store-unreachable'],
])('%s is told as %s', (code, told) => {
  const error = Object.assign(new Error('engine words'), { code });
  expect(sqliteTrouble(error, 'x.sqlite')).toMatchObject({ code: told, cause: error });
});

test('what nobody foresaw is passed on as it is', () => {
  const error = new Error('unforeseen');
  expect(sqliteTrouble(error, 'x.sqlite')).toBe(error);
});
