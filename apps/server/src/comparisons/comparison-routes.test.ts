import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Comparison, ComparisonRefusal } from '@standstill/workshop';
import { serverUnderTest } from '../server.testing.ts';
import type { ServerUnderTest } from '../server.testing.ts';
import { loadDemo } from '../start/load-demo.ts';
import { readDemo } from '../start/read-demo.ts';

const demo = fileURLToPath(new URL('../../../../examples/hill-climb-coupe/job.yaml', import.meta.url));
let server: ServerUnderTest;
let before: string[];
let after: string[];
beforeAll(async () => {
  server = await serverUnderTest();
  let ids = 0;
  const parts = { store: server.store, clock: () => new Date(0), ids: () => `log-${(ids += 1)}` };
  await loadDemo(parts, await readDemo(demo));
  const logs = await server.store.listLogs('demo');
  before = logs.filter(({ name }) => name === 'before.csv').map(({ id }) => id);
  after = logs.filter(({ name }) => name === 'after.csv').map(({ id }) => id);
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
});
