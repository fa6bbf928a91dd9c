import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { keptConnection } from './kept-connection.ts';

test('one statement a text, made once', () => {
  const connection = keptConnection(new Database(':memory:'));
  const first = connection.prepare('select 1 as one');
  expect(connection.prepare('select 1 as one')).toBe(first);
  expect(connection.prepare('select 2 as two')).not.toBe(first);
  expect(first.get()).toEqual({ one: 1 });
  connection.close();
});

// Only a Node from 24.19 on can abort here; on an older one this holds that the way through the store is sound.
test('a store in use survives collections that run while no JavaScript does', () => {
  const store = fileURLToPath(new URL('../../dist/index.js', import.meta.url));
  const program = `
    import { mkdtempSync, rmSync } from 'node:fs';
    const { openStore } = await import(${JSON.stringify(store)});
    const folder = mkdtempSync(${JSON.stringify(join(tmpdir(), 'standstill-kept-'))});
    const kept = await openStore({ address: folder });
    for (let i = 0; i < 60; i += 1) {
      await kept.createJob({ id: 'job-' + i, title: 't', document: { i }, at: '2026-01-01T00:00:00Z' });
      if (i % 10 === 0) { gc(); await new Promise((resolve) => setTimeout(resolve, 20)); }
    }
    process.stdout.write(String((await kept.listJobs()).length));
    await kept.close();
    rmSync(folder, { recursive: true });`;
  const words = ['--expose-gc', '--max-semi-space-size=1', '--input-type=module', '--eval', program];
  const { status, stdout, stderr } = spawnSync(process.execPath, words, { encoding: 'utf8' });
  expect({ status, stdout, stderr }).toEqual({ status: 0, stdout: '60', stderr: '' });
});
