import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Comparison, ComparisonRefusal } from '@standstill/workshop';
import { demoServer } from '../proof/demo-logs.testing.ts';
import type { DemoServer } from '../proof/demo-logs.testing.ts';

let server: DemoServer;
let before: readonly string[];
let after: readonly string[];
beforeAll(async () => {
  server = await demoServer();
  ({ before, after } = server);
});
afterAll(() => server.stop());

const compare = (payload: object) => server.app.inject({ method: 'POST', url: '/api/comparisons', payload });

describe('a comparison of kept logs', () => {
  test('takes from the job what its runs tell: speed, set-ups, and what else was different', async () => {
    const answer = await compare({ jobId: 'demo', before, after });
    const comparison = answer.json<Comparison>();
    expect(answer.statusCode).toBe(200);
    expect(comparison.kind).toBe('comparison');
    expect(comparison.nominalSpeed_m_s).toBeCloseTo(26.8224, 9);
    expect(comparison.confounders.join(' ')).toMatch(/tires: .*as found.* before, New tires/);
    expect(comparison.expectation?.setUp).toBe('four-wheel-kit-with-valve');
    expect([comparison.before.count, comparison.after.count].every((count) => count >= 3)).toBe(true);
  });

  test('says the same each time, and differs by definition and names as asked', async () => {
    const first = (await compare({ jobId: 'demo', before, after })).json<Comparison>();
    expect((await compare({ jobId: 'demo', before, after })).json()).toEqual(first);
    const asked = { definition: 'gate', beforeName: 'May 9', confounders: ['other driver'], units: 'metric' };
    const other = (await compare({ jobId: 'demo', before, after, ...asked })).json<Comparison>();
    expect(other).toMatchObject({ definition: 'gate', before: { name: 'May 9' } });
    expect(other.confounders).toContain('other driver');
  });

  test('of a set with itself is refused, for it shows nothing', async () => {
    const same = (await compare({ jobId: 'demo', before, after: before })).json<ComparisonRefusal>();
    expect(same).toMatchObject({ kind: 'comparison-refusal', code: 'same-log' });
    expect(same.sentence).toMatch(/is given twice, in two sets/);
  });

  test.each([
    [{ before: [], after: ['x'] }, 400, 'request-invalid'],
    [{ before: ['nothing'], after: ['nothing'] }, 404, 'log-not-found'],
    [{ jobId: 'nobody', before: ['x'], after: ['x'] }, 404, 'job-not-found'],
  ])('of %j is refused', async (payload, status, code) => {
    expect((await compare({ jobId: 'demo', ...payload })).json()).toMatchObject({
      status,
      type: `/problems/${code}`,
    });
  });

  test('with a log that can not be read says which and why', async () => {
    const url = '/api/jobs/demo/logs?name=notes.txt';
    const kept = await server.app.inject({ method: 'POST', url, payload: 'Dear diary, no numbers today.' });
    const answer = await compare({ jobId: 'demo', before, after: [kept.json<{ id: string }>().id] });
    expect(answer.json()).toMatchObject({
      status: 422,
      type: '/problems/log-not-usable',
      problems: [{ path: 'after[0]', found: 'notes.txt' }],
    });
  });

  test('with a set-up that the job does not have says so', async () => {
    const answer = await compare({
      jobId: 'demo',
      before,
      after,
      expectation: { setUp: 'moon-kit', against: 'as-found' },
    });
    expect(answer.json()).toMatchObject({ status: 422, problems: [{ code: 'unknown-set-up' }] });
  });

  test('takes the old set-up once more, and a reference car only on both days', async () => {
    const url = '/api/jobs/demo/logs?name=again.csv';
    const content = (await server.store.getLog('demo', before[0] ?? ''))?.bytes ?? new Uint8Array();
    // The same stops half a minute later: no drift at all.
    const later = Buffer.from(content)
      .toString()
      .replaceAll(/^(\d+\.\d+),/gm, (_, time) => `${Number(time) + 30},`);
    const kept = await server.app.inject({ method: 'POST', url, payload: later });
    const repeat = [kept.json<{ id: string }>().id];
    const asked = (await compare({ jobId: 'demo', before, after, repeat })).json<Comparison>();
    expect(asked.control?.kind).toBe('repeat');
    expect(asked.control?.drift_m.value).toBeCloseTo(0, 1);
    const half = await compare({ jobId: 'demo', before, after, referenceBefore: repeat });
    expect(half.json()).toMatchObject({ status: 400, type: '/problems/request-invalid' });
    expect(half.json<{ detail: string }>().detail).toContain('both referenceBefore and referenceAfter');
  });

  test('comes as a picture where one is asked for, and says why where there is none', async () => {
    const picture = (query: string, headers: Record<string, string>, payload: object) =>
      server.app.inject({ method: 'POST', url: `/api/comparisons${query}`, headers, payload });
    const asked = await picture('?as=svg', {}, { jobId: 'demo', before, after });
    expect(asked.statusCode).toBe(200);
    expect(asked.headers['content-type']).toBe('image/svg+xml; charset=utf-8');
    expect(asked.body).toMatch(
      /^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg".*<title>Every run, before and after<\/title>/,
    );
    const same = await picture('?as=svg', {}, { jobId: 'demo', before, after: before });
    expect(same.json()).toMatchObject({ status: 422, type: '/problems/nothing-to-draw' });
    expect((await picture('?as=png', {}, { jobId: 'demo', before, after })).json()).toMatchObject({
      status: 400,
    });
  });
});
