import { expect, test } from 'vitest';
import { StoreError } from '@standstill/storage';
import type { Store } from '@standstill/workshop';
import { serverUnderTest } from '../server.testing.ts';

test('the health names engine, schema and program', async () => {
  const server = await serverUnderTest();
  const answer = await server.app.inject('/api/health');
  expect(answer.json()).toEqual({
    status: 'ok',
    engine: 'sqlite',
    schemaVersion: 1,
    programVersion: '0.1.0',
  });
  await server.stop();
});

const gone = (): Promise<never> =>
  Promise.reject(new StoreError('store-unreachable', 'The database is gone.'));

test('a database that is gone is said so', async () => {
  const store = {
    engine: 'postgresql',
    schemaVersion: gone,
    close: () => Promise.resolve(),
  } as Partial<Store> as Store;
  const server = await serverUnderTest({ store });
  const answer = await server.app.inject('/api/health');
  expect(answer.json()).toMatchObject({
    status: 503,
    type: '/problems/store-unavailable',
    detail: 'The database is gone.',
  });
  await server.stop();
});
