import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { exampleLog } from '../logs/example-log.testing.ts';
import { jobDocument, makeJob, serverUnderTest } from '../server.testing.ts';
import type { ServerUnderTest } from '../server.testing.ts';
import type { Demo } from './demo.ts';
import { loadDemo } from './load-demo.ts';
import { readDemo } from './read-demo.ts';

let server: ServerUnderTest;
let ids = 0;
beforeEach(async () => {
  server = await serverUnderTest();
});
afterEach(() => server.stop());

const load = (demo: Demo | (() => Promise<Demo>)) =>
  loadDemo({ store: server.store, clock: () => new Date(0), ids: () => `log-${(ids += 1)}` }, demo);
const unread = (): Promise<Demo> => Promise.reject(new Error('read for nothing'));
const demo: Demo = {
  document: jobDocument('The demo'),
  logs: [
    { name: 'before.csv', bytes: exampleLog(7) },
    { name: 'after.csv', bytes: exampleLog(8) },
  ],
};

test('an empty store gets the demo job under its own id, with its logs', async () => {
  expect(await load(demo)).toBe(true);
  expect(await server.store.getJob('demo')).toMatchObject({ title: 'The demo', version: 1 });
  expect((await server.store.listLogs('demo')).map(({ name }) => name).sort()).toEqual([
    'after.csv',
    'before.csv',
  ]);
});

test('a second start adds nothing, and one that broke off is completed', async () => {
  await load({ ...demo, logs: demo.logs.slice(0, 1) });
  await load(demo);
  await load(demo);
  expect(await server.store.listJobVersions('demo')).toHaveLength(1);
  expect(await server.store.listLogs('demo')).toHaveLength(2);
});

test('a store with jobs, or with a demo that somebody changed, is left alone, and the demo is not even read', async () => {
  await load(demo);
  await server.store.replaceJob('demo', 1, jobDocument('Mine now'), 'Mine now', new Date(0).toISOString());
  expect(await load(unread)).toBe(false);
  await makeJob(server.app);
  expect(await load(unread)).toBe(false);
  expect((await server.store.getJob('demo'))?.title).toBe('Mine now');
});

test('a demo with mistakes is refused, and nothing is kept', async () => {
  await expect(load({ document: { title: 'Not a job' }, logs: [] })).rejects.toMatchObject({
    code: 'job-invalid',
  });
  expect(await server.store.listJobs()).toEqual([]);
});

test('a job file brings the logs that its runs name', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'standstill-demo-'));
  const run = { id: 'first', setUp: Object.keys(jobDocument()['setUps'] as object)[0], log: 'before.csv' };
  writeFileSync(
    join(folder, 'job.yaml'),
    JSON.stringify({ ...jobDocument('From a file'), runs: [run] }, null, 2),
  );
  writeFileSync(join(folder, 'before.csv'), exampleLog());
  const read = await readDemo(join(folder, 'job.yaml'));
  expect(read.logs.map(({ name, bytes }) => [name, bytes.length])).toEqual([
    ['before.csv', exampleLog().length],
  ]);
  expect(read.document).toMatchObject({ title: 'From a file' });
  rmSync(folder, { recursive: true, force: true });
});
