import { afterEach, describe, expect, test } from 'vitest';
import { StoreError } from '@standstill/storage';
import type { StoreErrorCode } from '@standstill/storage';
import type { Store } from '@standstill/workshop';
import { createServer } from '../create-server.ts';
import { jobDocument, serverUnderTest } from '../server.testing.ts';
import type { ServerUnderTest } from '../server.testing.ts';
import { serverProblems } from './problem-codes.ts';

let server: ServerUnderTest | null = null;
afterEach(() => server?.stop());

/** A store on which everything ends in this error. */
function failing(reason: unknown): Store {
  const fail = (): Promise<never> => Promise.reject(reason);
  const calls = { listJobs: fail, getJob: fail, createJob: fail, replaceJob: fail, listJobVersions: fail };
  const logs = { addLog: fail, listLogs: fail, getLog: fail, schemaVersion: fail };
  return { engine: 'sqlite', ...calls, ...logs, close: () => Promise.resolve() };
}

async function answerTo(error: unknown) {
  server = await serverUnderTest({ store: failing(error) });
  return server.app.inject({ method: 'POST', url: '/api/jobs', payload: jobDocument() });
}

const told: [StoreErrorCode, number, string][] = [
  ['store-full', 507, 'store-full'],
  ['store-busy', 503, 'store-unavailable'],
  ['store-unreachable', 503, 'store-unavailable'],
  ['store-read-only', 503, 'store-unavailable'],
  ['store-text-refused', 422, 'text-refused'],
  ['store-log-damaged', 500, 'log-damaged'],
];

describe('trouble of the store', () => {
  test.each(told)('%s is answered with %i and its own sentence', async (code, status, type) => {
    const answer = await answerTo(new StoreError(code, 'What the store says.'));
    expect(answer.statusCode).toBe(status);
    expect(answer.json()).toMatchObject({
      type: `/problems/${type}`,
      status,
      detail: 'What the store says.',
    });
  });

  test('that passes says when to try again', async () => {
    const answer = await answerTo(new StoreError('store-busy', 'Busy.'));
    expect(answer.headers['retry-after']).toBe('1');
  });
});

test('what nobody foresaw is answered without its words, and logged with the request’s id', async () => {
  const lines: string[] = [];
  const stream = { write: (line: string) => void lines.push(line) };
  const store = failing(new Error('password=hunter2'));
  const app = createServer({
    store,
    clock: () => new Date(0),
    ids: () => 'request-7',
    webFolder: '/none',
    logger: { level: 'error', stream },
  });
  const answer = await app.inject('/api/jobs');
  await app.close();
  expect(answer.json()).toMatchObject({
    status: 500,
    type: '/problems/internal-error',
    requestId: 'request-7',
  });
  expect(answer.body).not.toContain('hunter2');
  expect(answer.headers['x-request-id']).toBe('request-7');
  expect(lines).toHaveLength(1);
  expect(JSON.parse(lines[0] ?? '')).toMatchObject({
    requestId: 'request-7',
    err: { message: 'password=hunter2' },
  });
});

test('an id that is taken is a conflict, and the job that has it stays', async () => {
  const { store, stop } = await serverUnderTest();
  const app = createServer({ store, clock: () => new Date(0), ids: () => 'always', webFolder: '/none' });
  const make = (title: string) =>
    app.inject({ method: 'POST', url: '/api/jobs', payload: jobDocument(title) });
  expect((await make('First')).statusCode).toBe(201);
  expect((await make('Second')).json()).toMatchObject({ status: 409, type: '/problems/job-exists' });
  expect((await store.getJob('always'))?.title).toBe('First');
  await app.close();
  await stop();
});

test('the address of each problem explains it', async () => {
  server = await serverUnderTest();
  for (const [code, { status, title }] of Object.entries(serverProblems)) {
    const answer = await server.app.inject(`/problems/${code}`);
    expect(answer.body).toBe(`${title} (${status} ${code}). See docs/errors.md.\n`);
  }
  expect((await server.app.inject('/problems/toString')).json()).toMatchObject({ status: 404 });
});
