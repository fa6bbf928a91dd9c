import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { serverUnderTest } from '../server.testing.ts';
import type { ServerUnderTest } from '../server.testing.ts';

const folder = mkdtempSync(join(tmpdir(), 'standstill-app-'));
const page = '<!doctype html><title>The page</title>';
let server: ServerUnderTest;

beforeAll(async () => {
  mkdirSync(join(folder, 'web', 'assets'), { recursive: true });
  const put = (name: string, content: string | Buffer) => writeFileSync(join(folder, 'web', name), content);
  writeFileSync(join(folder, 'secret.txt'), 'not to be served');
  put('index.html', page);
  put('.hidden', 'not to be served');
  put('assets/index-P2Xu9kJm.js', 'console.log(1)');
  put('assets/index-P2Xu9kJm.js.gz', gzipSync('console.log(1)'));
  put('theme.js', 'plain');
  server = await serverUnderTest({ webFolder: join(folder, 'web') });
});
afterAll(async () => {
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
});

describe('the app', () => {
  test.each(['/', '/index.html', '/jobs/demo/survey', '/jobs/demo/options?unit=metric'])(
    '%s gives the page',
    async (url) => {
      const answer = await server.app.inject(url);
      expect(answer.statusCode).toBe(200);
      expect(answer.body).toBe(page);
      expect(answer.headers['content-type']).toMatch(/^text\/html/);
      expect(answer.headers['cache-control']).toBe('no-cache');
    },
  );

  test('a file whose name has a hash is kept for ever, any other is asked for again', async () => {
    const hashed = await server.app.inject('/assets/index-P2Xu9kJm.js');
    expect(hashed.headers['cache-control']).toBe('public, max-age=31536000, immutable');
    expect((await server.app.inject('/theme.js')).headers['cache-control']).toBe('no-cache');
  });

  test('a compressed twin is sent to who takes it', async () => {
    const headers = { 'accept-encoding': 'gzip' };
    const answer = await server.app.inject({ url: '/assets/index-P2Xu9kJm.js', headers });
    expect(answer.headers['content-encoding']).toBe('gzip');
    expect(answer.headers['content-type']).toMatch(/javascript/);
    expect(answer.headers['cache-control']).toBe('public, max-age=31536000, immutable');
    expect(gunzipSync(answer.rawPayload).toString()).toBe('console.log(1)');
    expect((await server.app.inject('/assets/index-P2Xu9kJm.js')).body).toBe('console.log(1)');
  });

  test.each([
    '/assets/gone-AAAAAAAA.js',
    '/nothing.png',
    '/api/nothing',
    '/api',
    '/.hidden',
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
  ])('%s is a problem, not the page', async (url) => {
    const answer = await server.app.inject(url);
    expect(answer.statusCode).toBeGreaterThanOrEqual(400);
    expect(answer.statusCode).toBeLessThan(500);
    expect(answer.body).not.toContain('not to be served');
    expect(answer.headers['content-type']).toMatch(/^application\/problem\+json/);
  });

  test('is not posted to', async () => {
    expect((await server.app.inject({ method: 'POST', url: '/jobs/demo' })).statusCode).toBe(404);
  });
});

test('an app that is not built is said so in one line', async () => {
  const bare = await serverUnderTest();
  expect((await bare.app.inject('/')).json()).toMatchObject({ status: 404, type: '/problems/app-not-built' });
  await bare.stop();
});
