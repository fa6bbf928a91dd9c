import { createHash } from 'node:crypto';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { LogRefusal, LogReport, LogSummary } from '@standstill/workshop';
import { jobDocument, makeJob, serverUnderTest } from '../server.testing.ts';
import type { ServerUnderTest } from '../server.testing.ts';
import { exampleLog } from './example-log.testing.ts';

type Kept = LogSummary & { readonly report: LogReport | LogRefusal };

let server: ServerUnderTest;
let id: string;
beforeEach(async () => {
  server = await serverUnderTest();
  id = await makeJob(server.app);
});
afterEach(() => server.stop());

const upload = (content: Uint8Array, query = 'name=before.csv', headers: Record<string, string> = {}) =>
  server.app.inject({
    method: 'POST',
    url: `/api/jobs/${id}/logs?${query}`,
    payload: Buffer.from(content),
    headers: { 'content-type': 'application/octet-stream', ...headers },
  });

describe('an uploaded log', () => {
  test('is kept byte for byte and reported', async () => {
    const content = exampleLog();
    const answer = await upload(content, 'name=before.csv&speed_m_s=26');
    const kept = answer.json<Kept>();
    expect(answer.statusCode).toBe(201);
    expect(answer.headers['location']).toBe(`/api/jobs/${id}/logs/${kept.id}`);
    expect(kept).toMatchObject({ jobId: id, name: 'before.csv', bytes: content.length });
    expect(kept.sha256).toBe(createHash('sha256').update(content).digest('hex'));
    expect(kept.report).toMatchObject({ kind: 'log-report', nominalSpeed_m_s: 26, stops: [{ number: 1 }] });
    const back = await server.app.inject(`/api/jobs/${id}/logs/${kept.id}`);
    expect(Buffer.compare(back.rawPayload, Buffer.from(content))).toBe(0);
  });

  test('that can not be read is kept all the same, and said so in one sentence', async () => {
    const noise = Uint8Array.from({ length: 5000 }, (_, index) => (index * 7919 + (index >> 3)) & 0xff);
    const answer = await upload(noise, 'name=noise.bin');
    const kept = answer.json<Kept>();
    expect(answer.statusCode).toBe(201);
    expect(kept.report.kind).toBe('log-refusal');
    expect(kept.report.sentence.split('\n')).toHaveLength(1);
    const back = await server.app.inject(`/api/jobs/${id}/logs/${kept.id}`);
    expect(Buffer.compare(back.rawPayload, Buffer.from(noise))).toBe(0);
  });

  test('a second time gives the same log back', async () => {
    const first = (await upload(exampleLog())).json<Kept>();
    const again = await upload(exampleLog(), 'name=copy.csv');
    expect(again.statusCode).toBe(200);
    expect(again.json()).toMatchObject({ id: first.id, name: 'before.csv' });
    expect((await server.app.inject(`/api/jobs/${id}/logs`)).json<{ logs: unknown[] }>().logs).toHaveLength(
      1,
    );
  });

  test.each(['text/csv', 'text/plain', 'application/json', 'application/gpx+xml', 'application/x-made-up'])(
    'may be called %s',
    async (type) => {
      expect((await upload(exampleLog(), 'name=a.csv', { 'content-type': type })).statusCode).toBe(201);
    },
  );

  test('that is empty is kept and refused', async () => {
    const answer = await upload(new Uint8Array(0));
    expect(answer.statusCode).toBe(201);
    expect(answer.json<Kept>()).toMatchObject({ bytes: 0, report: { kind: 'log-refusal' } });
  });

  test.each([
    ['', 'request-invalid'],
    ['name=', 'request-invalid'],
    [`name=${'x'.repeat(201)}`, 'request-invalid'],
    ['name=..%2F..%2Fetc%2Fpasswd', 'request-invalid'],
    ['name=a%00b.csv', 'request-invalid'],
    ['name=a%0D%0Ab.csv', 'request-invalid'],
    ['name=a&name=b', 'request-invalid'],
    ['name=a.csv&speed_m_s=-3', 'request-invalid'],
    ['name=a.csv&speed_m_s=fast', 'request-invalid'],
    ['name=a.csv&units=furlongs', 'request-invalid'],
  ])('with ?%s is refused and nothing is kept', async (query, code) => {
    const answer = await upload(exampleLog(), query);
    expect(answer.json()).toMatchObject({ status: 400, type: `/problems/${code}` });
    expect(answer.json<{ problems: { path: string }[] }>().problems[0]?.path).toMatch(/^query\./);
    expect(await server.store.listLogs(id)).toEqual([]);
  });

  test.each([
    [{ 'content-type': 'multipart/form-data; boundary=x' }, 'Send the file itself'],
    [{ 'content-encoding': 'gzip' }, 'not compressed'],
  ])('with %o is refused', async (headers, words) => {
    const answer = await upload(exampleLog(), 'name=a.csv', headers);
    expect(answer.json()).toMatchObject({ status: 415, type: '/problems/media-type-unsupported' });
    expect(answer.json<{ detail: string }>().detail).toContain(words);
    expect(await server.store.listLogs(id)).toEqual([]);
  });

  test('for no job is refused', async () => {
    const answer = await server.app.inject({
      method: 'POST',
      url: '/api/jobs/nobody/logs?name=a.csv',
      payload: 'x',
    });
    expect(answer.json()).toMatchObject({ status: 404, type: '/problems/job-not-found' });
  });
});

describe('a kept log', () => {
  test('comes back as a file under its own name, and not twice', async () => {
    const kept = (await upload(exampleLog(), `name=${encodeURIComponent('läuft vorher.csv')}`)).json<Kept>();
    const url = `/api/jobs/${id}/logs/${kept.id}`;
    const { headers } = await server.app.inject(url);
    expect(headers['content-type']).toBe('application/octet-stream');
    expect(headers['content-disposition']).toBe(
      `attachment; filename="l_uft vorher.csv"; filename*=UTF-8''l%C3%A4uft%20vorher.csv`,
    );
    expect(headers['etag']).toBe(`"${kept.sha256}"`);
    const again = await server.app.inject({ url, headers: { 'if-none-match': `"${kept.sha256}"` } });
    expect([again.statusCode, again.body]).toEqual([304, '']);
  });

  test('is reported again, from the speed that the job states or another', async () => {
    const kept = (await upload(exampleLog())).json<Kept>();
    const report = async (query: string) =>
      (await server.app.inject(`/api/jobs/${id}/logs/${kept.id}/report${query}`)).json<LogReport>();
    expect((await report('')).nominalSpeed_m_s).toBeCloseTo(26.8224, 9);
    expect((await report('?speed_m_s=20')).nominalSpeed_m_s).toBe(20);
  });

  test('is drawn, whole or one stop of it, and leaves out what began too cold', async () => {
    const kept = (await upload(exampleLog())).json<Kept>();
    const look = (query: string) => server.app.inject(`/api/jobs/${id}/logs/${kept.id}/report${query}`);
    const url = `/api/jobs/${id}/logs/${kept.id}/report`;
    const all = await server.app.inject({ url, headers: { accept: 'image/svg+xml,*/*;q=0.8' } });
    expect(all.body).toBe((await look('?as=svg')).body);
    expect(all.headers['content-type']).toBe('image/svg+xml; charset=utf-8');
    expect(all.body).toContain('Stop 1 in before.csv');
    expect((await look('?as=svg&stop=1')).body).toMatch(/<title>Stop 1 in before\.csv/);
    expect((await look('?as=svg&stop=99')).json()).toMatchObject({ type: '/problems/nothing-to-draw' });
    const window = await look('?startTemperatureLow_C=65&startTemperatureHigh_C=100');
    expect(window.json<LogReport>().kind).toBe('log-report');
    expect((await look('?startTemperatureLow_C=65')).json()).toMatchObject({ status: 400 });
    expect((await look('?startTemperatureLow_C=99&startTemperatureHigh_C=65')).json()).toMatchObject({
      status: 400,
    });
  });

  test('that is not there is not found, and neither is another job’s', async () => {
    const kept = (await upload(exampleLog())).json<Kept>();
    const other = await makeJob(server.app);
    for (const url of [
      `/api/jobs/${id}/logs/nothing`,
      `/api/jobs/${other}/logs/${kept.id}`,
      `/api/jobs/${other}/logs/${kept.id}/report`,
    ])
      expect((await server.app.inject(url)).json()).toMatchObject({
        status: 404,
        type: '/problems/log-not-found',
      });
    for (const url of [`/api/jobs/nobody/logs`, `/api/jobs/nobody/logs/${kept.id}`])
      expect((await server.app.inject(url)).json()).toMatchObject({
        status: 404,
        type: '/problems/job-not-found',
      });
  });

  test('stays when the job’s document changes', async () => {
    await upload(exampleLog());
    await server.app.inject({
      method: 'PUT',
      url: `/api/jobs/${id}`,
      payload: jobDocument('Other'),
      headers: { 'if-match': '"1"' },
    });
    expect(await server.store.listLogs(id)).toHaveLength(1);
  });
});
