import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Problem } from '@standstill/workshop';
import { jobDocument, makeJob, serverUnderTest } from '../server.testing.ts';
import type { ServerUnderTest } from '../server.testing.ts';

let server: ServerUnderTest;
beforeEach(async () => {
  server = await serverUnderTest();
});
afterEach(() => server.stop());

const change = (id: string, payload: unknown, headers: Record<string, string> = {}) =>
  server.app.inject({ method: 'PUT', url: `/api/jobs/${id}`, payload: payload as object, headers });

describe('a new job', () => {
  test('is answered with its address, its version and its document', async () => {
    const answer = await server.app.inject({
      method: 'POST',
      url: '/api/jobs',
      payload: jobDocument('Soft pedal'),
    });
    const job = answer.json<{ id: string }>();
    expect(answer.statusCode).toBe(201);
    expect(answer.headers['location']).toBe(`/api/jobs/${job.id}`);
    expect(answer.headers['etag']).toBe('"1"');
    expect(job).toMatchObject({ title: 'Soft pedal', version: 1, document: jobDocument('Soft pedal') });
    expect((await server.app.inject(`/api/jobs/${job.id}`)).json()).toEqual(job);
  });

  test('may come as YAML', async () => {
    const payload = JSON.stringify(jobDocument('As YAML'), null, 2);
    const headers = { 'content-type': 'application/yaml' };
    const answer = await server.app.inject({ method: 'POST', url: '/api/jobs', payload, headers });
    expect(answer.statusCode).toBe(201);
    expect(answer.json()).toMatchObject({ title: 'As YAML' });
  });

  test('with mistakes is refused whole, each mistake named, and nothing is kept', async () => {
    const document = jobDocument();
    const { name: _, ...car } = document['car'] as Record<string, unknown>;
    const payload = { ...document, car: { ...car, wheelbase: '98 inc', frontShare: '200 %' }, extra: 1 };
    const answer = await server.app.inject({ method: 'POST', url: '/api/jobs', payload });
    const { problems } = answer.json<{ problems: Problem[] }>();
    expect(answer.statusCode).toBe(422);
    expect(answer.headers['content-type']).toBe('application/problem+json; charset=utf-8');
    expect(problems.map(({ path }) => path).sort()).toEqual(
      ['car.frontShare', 'car.name', 'car.wheelbase', 'extra'].sort(),
    );
    for (const problem of problems) expect(problem.message.length).toBeGreaterThan(10);
    expect((await server.app.inject('/api/jobs')).json()).toEqual({ jobs: [] });
  });

  test('as YAML with tabs names line and column', async () => {
    const payload = 'standstill: 2\ntitle: Tabs\ncar:\n\tname: x\n';
    const headers = { 'content-type': 'application/yaml' };
    const answer = await server.app.inject({ method: 'POST', url: '/api/jobs', payload, headers });
    expect(answer.statusCode).toBe(422);
    expect(answer.json<{ problems: Problem[] }>().problems[0]).toMatchObject({ code: 'job-tabs', line: 4 });
    expect(answer.json<{ detail: string }>().detail).toMatch(/^Line 4, column 1: /);
  });

  test.each([
    ['no body', undefined, 'application/json', 400, 'request-malformed'],
    ['broken JSON', '{"title":', 'application/json', 400, 'request-malformed'],
    ['a poisoned prototype', '{"__proto__":{"a":1}}', 'application/json', 400, 'request-malformed'],
    ['a form', 'a=1', 'application/x-www-form-urlencoded', 415, 'media-type-unsupported'],
    ['an empty object', '{}', 'application/json', 422, 'job-invalid'],
    ['a list', '[]', 'application/json', 422, 'job-invalid'],
    ['null', 'null', 'application/json', 422, 'job-invalid'],
    ['a number too large', '1e999', 'application/json', 422, 'job-invalid'],
    ['3 MB', `"${'x'.repeat(3_000_000)}"`, 'application/json', 413, 'body-too-large'],
    ['very deep brackets', '['.repeat(400_000), 'application/json', 400, 'request-malformed'],
    [
      'very deep lists',
      `${'['.repeat(400_000)}${']'.repeat(400_000)}`,
      'application/json',
      422,
      'job-invalid',
    ],
    ['very deep YAML', '['.repeat(400_000), 'application/yaml', 422, 'job-invalid'],
  ])('%s is refused', async (_, payload, type, status, code) => {
    const headers = { 'content-type': type };
    const answer = await server.app.inject({
      method: 'POST',
      url: '/api/jobs',
      headers,
      ...(payload === undefined ? {} : { payload }),
    });
    expect(answer.json()).toMatchObject({ status, type: `/problems/${code}`, instance: '/api/jobs' });
    expect(answer.statusCode).toBe(status);
    expect(await server.store.listJobs()).toEqual([]);
  });

  test('with a character that can not be kept is refused', async () => {
    const answer = await server.app.inject({
      method: 'POST',
      url: '/api/jobs',
      payload: jobDocument('a\0b'),
    });
    expect(answer.statusCode).toBe(422);
    expect(await server.store.listJobs()).toEqual([]);
  });
});

describe('the list of jobs', () => {
  test('has the newest change first', async () => {
    const first = await makeJob(server.app, 'First');
    await makeJob(server.app, 'Second');
    const titles = async () =>
      (await server.app.inject('/api/jobs'))
        .json<{ jobs: { title: string }[] }>()
        .jobs.map(({ title }) => title);
    expect(await titles()).toEqual(['Second', 'First']);
    await change(first, jobDocument('First again'), { 'if-match': '"1"' });
    expect(await titles()).toEqual(['First again', 'Second']);
  });
});

describe('a kept job', () => {
  test('is not sent again to someone who has it', async () => {
    const id = await makeJob(server.app);
    for (const known of ['"1"', 'W/"1"', '"0", "1"', '*']) {
      const answer = await server.app.inject({ url: `/api/jobs/${id}`, headers: { 'if-none-match': known } });
      expect([answer.statusCode, answer.body, answer.headers['etag']]).toEqual([304, '', '"1"']);
    }
    const stale = await server.app.inject({ url: `/api/jobs/${id}`, headers: { 'if-none-match': '"2"' } });
    expect(stale.statusCode).toBe(200);
  });

  test('that does not exist is not found, whatever the id', async () => {
    for (const id of ['nobody', '%00', '%F0%9F%9B%9E', `a%20or%201=1`, 'x'.repeat(150)])
      expect((await server.app.inject(`/api/jobs/${id}`)).json()).toMatchObject({
        status: 404,
        type: '/problems/job-not-found',
      });
  });
});

describe('a change', () => {
  test('counts the version up and is answered with it', async () => {
    const id = await makeJob(server.app);
    const answer = await change(id, jobDocument('Changed'), { 'if-match': '"1"' });
    expect(answer.statusCode).toBe(200);
    expect(answer.headers['etag']).toBe('"2"');
    expect(answer.json()).toMatchObject({ id, version: 2, title: 'Changed' });
  });

  test('that does not say which version it saw is refused', async () => {
    const id = await makeJob(server.app);
    for (const headers of [{}, { 'if-match': '*' }]) {
      const answer = await change(id, jobDocument('Blind'), headers);
      expect(answer.json()).toMatchObject({ status: 428, type: '/problems/version-required' });
    }
    for (const wrong of ['1', 'W/"1"', '"1", "2"', '"one"', '"-1"', '""', `"${'9'.repeat(40)}"`]) {
      const answer = await change(id, jobDocument('Blind'), { 'if-match': wrong });
      expect(answer.json()).toMatchObject({ status: 400, type: '/problems/version-not-understood' });
    }
    expect((await server.store.getJob(id))?.version).toBe(1);
  });

  test('to a version that someone else replaced brings what stands', async () => {
    const id = await makeJob(server.app);
    await change(id, jobDocument('Theirs'), { 'if-match': '"1"' });
    const answer = await change(id, jobDocument('Mine'), { 'if-match': '"1"' });
    expect(answer.statusCode).toBe(412);
    expect(answer.headers['etag']).toBe('"2"');
    expect(answer.json()).toMatchObject({
      type: '/problems/version-changed',
      current: { id, version: 2, title: 'Theirs', document: jobDocument('Theirs') },
    });
    expect((await server.store.getJob(id))?.title).toBe('Theirs');
  });

  test('with mistakes is refused whole', async () => {
    const id = await makeJob(server.app);
    const answer = await change(id, { ...jobDocument(), title: '' }, { 'if-match': '"1"' });
    expect(answer.json()).toMatchObject({ status: 422, type: '/problems/job-invalid' });
    expect((await server.store.getJob(id))?.version).toBe(1);
  });

  test('to no job is not found', async () => {
    const answer = await change('nobody', jobDocument(), { 'if-match': '"1"' });
    expect(answer.json()).toMatchObject({ status: 404, type: '/problems/job-not-found' });
  });

  test('of many at once exactly one gets through and all others see it', async () => {
    const id = await makeJob(server.app);
    const lanes = Array.from({ length: 12 }, (_, lane) =>
      change(id, jobDocument(`lane ${lane}`), { 'if-match': '"1"' }),
    );
    const answers = await Promise.all(lanes);
    const winners = answers.filter(({ statusCode }) => statusCode === 200);
    const losers = answers.filter(({ statusCode }) => statusCode === 412);
    expect([winners.length, losers.length]).toEqual([1, 11]);
    const title = winners[0]?.json<{ title: string }>().title;
    for (const loser of losers) expect(loser.json()).toMatchObject({ current: { version: 2, title } });
  });
});

describe('the versions of a job', () => {
  test('are all there, oldest first', async () => {
    const id = await makeJob(server.app, 'One');
    await change(id, jobDocument('Two'), { 'if-match': '"1"' });
    await change(id, jobDocument('Three'), { 'if-match': '"2"' });
    const { versions } = (await server.app.inject(`/api/jobs/${id}/versions`)).json<{
      versions: { title: string; version: number }[];
    }>();
    expect(versions.map(({ title, version }) => [version, title])).toEqual([
      [1, 'One'],
      [2, 'Two'],
      [3, 'Three'],
    ]);
    expect((await server.app.inject('/api/jobs/nobody/versions')).statusCode).toBe(404);
  });
});
