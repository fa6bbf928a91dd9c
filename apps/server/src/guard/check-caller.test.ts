import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { jobDocument, serverUnderTest } from '../server.testing.ts';
import type { ServerUnderTest } from '../server.testing.ts';
import { allowedHosts } from './allowed-hosts.ts';

let server: ServerUnderTest;
beforeEach(async () => {
  server = await serverUnderTest();
});
afterEach(() => server.stop());

const get = (headers: Record<string, string>) => server.app.inject({ url: '/api/jobs', headers });
const post = (headers: Record<string, string>) =>
  server.app.inject({ method: 'POST', url: '/api/jobs', payload: jobDocument(), headers });

describe('the name that the server is called by', () => {
  test.each(['localhost', 'localhost:4780', 'LOCALHOST:80', '127.0.0.1:4780', '[::1]:4780'])(
    '%s is its own',
    async (host) => {
      expect((await get({ host })).statusCode).toBe(200);
    },
  );

  test.each([
    'evil.example',
    'evil.example:4780',
    'localhost.evil.example',
    '127.0.0.1.evil.example',
    '10.0.0.7',
  ])('"%s" is refused, for reading too', async (host) => {
    const answer = await get({ host });
    expect(answer.json()).toMatchObject({ status: 421, type: '/problems/host-refused' });
    expect((await post({ host })).statusCode).toBe(421);
  });

  test('is that of the address it listens on, where it has one', () => {
    expect(allowedHosts('192.168.7.9').has('192.168.7.9')).toBe(true);
    expect(allowedHosts('192.168.7.9').has('192.168.7.10')).toBe(false);
    expect(allowedHosts('fe80::1').has('[fe80::1]')).toBe(true);
    expect(allowedHosts('0.0.0.0').has('127.0.0.1')).toBe(true);
    expect(allowedHosts('0.0.0.0').has('evil.example')).toBe(false);
  });
});

describe('a write', () => {
  test.each([
    {},
    { origin: 'http://localhost:80' },
    { origin: 'https://localhost:80' },
    { 'sec-fetch-site': 'same-origin', origin: 'http://localhost:80' },
    { 'sec-fetch-site': 'none' },
  ])('from %o is let through', async (headers) => {
    expect((await post({ host: 'localhost:80', ...headers })).statusCode).toBe(201);
  });

  test.each([
    { origin: 'http://evil.example' },
    { origin: 'http://localhost:81' },
    { origin: 'null' },
    { origin: 'http://localhost:80.evil.example' },
    { 'sec-fetch-site': 'cross-site' },
    { 'sec-fetch-site': 'same-site', origin: 'http://localhost:80' },
  ])('from %o is refused and nothing is kept', async (headers) => {
    const answer = await post({ host: 'localhost:80', ...headers });
    expect(answer.json()).toMatchObject({ status: 403, type: '/problems/origin-refused' });
    expect(await server.store.listJobs()).toEqual([]);
  });
});

test('every answer tells the browser to load nothing from elsewhere', async () => {
  for (const url of ['/', '/api/jobs', '/api/nothing']) {
    const { headers } = await server.app.inject(url);
    expect(headers['content-security-policy']).toContain("default-src 'self'");
    expect(headers['content-security-policy']).not.toContain('unsafe');
    expect(headers['x-content-type-options']).toBe('nosniff');
    expect(headers['access-control-allow-origin']).toBeUndefined();
  }
});
