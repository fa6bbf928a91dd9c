import { randomBytes } from 'node:crypto';
import { request as startRequest } from 'node:http';
import { connect } from 'node:net';
import type { AddressInfo } from 'node:net';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { makeJob, serverUnderTest } from '../server.testing.ts';
import type { ServerUnderTest } from '../server.testing.ts';
import { uploadLimit } from './upload-limits.ts';

const megabyte = randomBytes(1_000_000);
let server: ServerUnderTest;
let id: string;
let port: number;
beforeEach(async () => {
  server = await serverUnderTest();
  id = await makeJob(server.app);
  await server.app.listen({ host: '127.0.0.1', port: 0 });
  port = (server.app.server.address() as AddressInfo).port;
});
afterEach(() => server.stop());

interface Ending {
  readonly status: number;
  readonly body: string;
  /** Bytes that the sender got rid of. */
  readonly sent: number;
}

/** Sends noise over a real socket until it is told to stop. */
function sendNoise(bytes: number, announce: boolean): Promise<Ending> {
  return new Promise((resolve, reject) => {
    let sent = 0;
    const headers = announce ? { 'content-length': bytes } : { 'transfer-encoding': 'chunked' };
    const sender = startRequest({
      host: '127.0.0.1',
      port,
      method: 'POST',
      path: `/api/jobs/${id}/logs?name=noise.bin`,
      headers,
    });
    sender.on('response', (response) => {
      let body = '';
      response.setEncoding('utf8').on('data', (piece: string) => (body += piece));
      response.on('end', () => {
        resolve({ status: response.statusCode ?? 0, body, sent });
        sender.destroy();
      });
    });
    sender.on('error', reject);
    const push = (): void => {
      while (sent < bytes) {
        sent += megabyte.length;
        if (!sender.write(megabyte)) return void sender.once('drain', push);
      }
      sender.end();
    };
    push();
  });
}

describe('an upload that is too large', () => {
  test.each([
    ['that says so', true],
    ['that does not say so', false],
  ])('%s gets one clear line, and nothing is kept', async (_, announce) => {
    const ending = await sendNoise(200_000_000, announce);
    expect(ending.status).toBe(413);
    expect(JSON.parse(ending.body)).toMatchObject({
      type: '/problems/body-too-large',
      detail: 'A log may have up to 64 MB. Nothing was kept. Cut the log to the stops.',
    });
    expect(await server.store.listLogs(id)).toEqual([]);
    expect((await server.app.inject(`/api/jobs/${id}/logs`)).json()).toEqual({ logs: [] });
  });

  test('and never ends is cut off', async () => {
    const socket = connect(port, '127.0.0.1');
    const started = Date.now();
    let answer = '';
    socket.setEncoding('utf8').on('data', (piece: string) => (answer += piece));
    const ended = new Promise<void>((resolve) =>
      socket.on('close', () => resolve()).on('error', () => undefined),
    );
    socket.write(
      `POST /api/jobs/${id}/logs?name=a HTTP/1.1\r\nHost: localhost\r\nTransfer-Encoding: chunked\r\n\r\n`,
    );
    const chunk = Buffer.concat([
      Buffer.from(`${megabyte.length.toString(16)}\r\n`),
      megabyte,
      Buffer.from('\r\n'),
    ]);
    const push = (): void => {
      while (!socket.destroyed && socket.write(chunk));
      if (!socket.destroyed) socket.once('drain', push);
    };
    push();
    await ended;
    expect(answer).toMatch(/^HTTP\/1\.1 413 /);
    expect(answer).toContain('connection: close');
    expect(Date.now() - started).toBeLessThan(20_000);
  });
});

test('the largest accepted upload is kept whole', async () => {
  const content = Buffer.alloc(uploadLimit, megabyte);
  const answer = await fetch(`http://127.0.0.1:${port}/api/jobs/${id}/logs?name=large.bin`, {
    method: 'POST',
    body: content,
  });
  expect(answer.status).toBe(201);
  const [log] = await server.store.listLogs(id);
  const kept = log && (await server.store.getLog(id, log.id));
  expect(kept && Buffer.compare(Buffer.from(kept.bytes), content)).toBe(0);
});

test('an upload that breaks off leaves nothing', async () => {
  const socket = connect(port, '127.0.0.1');
  socket.write(
    `POST /api/jobs/${id}/logs?name=a HTTP/1.1\r\nHost: localhost\r\nContent-Length: 5000\r\n\r\n0,60\n`,
  );
  await new Promise((resolve) => setTimeout(resolve, 100));
  socket.destroy();
  await new Promise((resolve) => setTimeout(resolve, 200));
  expect(await server.store.listLogs(id)).toEqual([]);
  expect((await fetch(`http://127.0.0.1:${port}/api/health`)).status).toBe(200);
});

test('a refusal reaches a sender who is refused before his body is read', async () => {
  const path = `http://127.0.0.1:${port}/api/jobs/nobody/logs?name=a.bin`;
  const answer = await fetch(path, { method: 'POST', body: Buffer.alloc(30_000_000, 7) });
  expect(answer.status).toBe(404);
  expect(await answer.json()).toMatchObject({ type: '/problems/job-not-found' });
});

test('what is no HTTP is answered with a problem document', async () => {
  for (const words of [
    'nonsense\r\n\r\n',
    'GET / HTTP/1.1\r\nHost: a\r\nContent-Length: x\r\n\r\n',
    'GET /\u0000 HTTP/1.1\r\n\r\n',
  ]) {
    const socket = connect(port, '127.0.0.1');
    let answer = '';
    socket.setEncoding('utf8').on('data', (piece: string) => (answer += piece));
    socket.write(words);
    await new Promise((resolve) => socket.on('close', resolve));
    expect(answer).toMatch(/^HTTP\/1\.1 400 /);
    expect(answer).toContain('application/problem+json');
  }
});

test.each(['', 'Host: \r\n', 'Host: evil.example\r\n'])(
  'a request with "%s" for a name is refused',
  async (host) => {
    const socket = connect(port, '127.0.0.1');
    let answer = '';
    socket.setEncoding('utf8').on('data', (piece: string) => (answer += piece));
    socket.write(`GET /api/jobs HTTP/1.0\r\n${host}\r\n`);
    await new Promise((resolve) => socket.on('close', resolve));
    expect(answer).toMatch(/^HTTP\/1\.1 421 /);
  },
);
