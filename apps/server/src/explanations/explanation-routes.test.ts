import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Reconciliation } from '@standstill/workshop';
import { demoServer } from '../proof/demo-logs.testing.ts';
import type { DemoServer } from '../proof/demo-logs.testing.ts';
import { makeJob } from '../server.testing.ts';

let server: DemoServer;
beforeAll(async () => {
  server = await demoServer();
});
afterAll(() => server.stop());

const explain = (payload: object, query = '') =>
  server.app.inject({ method: 'POST', url: `/api/explanations${query}`, payload });

describe('the model of a job against its kept logs', () => {
  test('takes both sides from the runs, says what the brakes explain and what else differed, and is drawn', async () => {
    const answer = await explain({ jobId: 'demo', draws: 100 });
    const result = answer.json<Reconciliation>();
    expect(answer.statusCode).toBe(200);
    expect(result.kind).toBe('reconciliation');
    expect(result.before).toMatchObject({ setUp: 'as-found', count: 7 });
    expect(result.after).toMatchObject({ setUp: 'four-wheel-kit-with-valve', count: 7 });
    expect(result.change?.measured_m?.high).toBeLessThan(0);
    expect(result.beyondTheBrakes.join(' ')).toMatch(/tires: .*as found.* before, New tires/);
    const sides = { before: server.before, after: server.after };
    const picture = await explain({ jobId: 'demo', draws: 100, ...sides }, '?as=svg');
    expect(picture.headers['content-type']).toBe('image/svg+xml; charset=utf-8');
    expect(picture.body).toContain('Not explained by the brakes');
  });

  test.each([
    [{}, 400, 'request-invalid'],
    [{ jobId: 'nobody' }, 404, 'job-not-found'],
    [{ jobId: 'demo', before: ['nothing'] }, 404, 'log-not-found'],
    [{ jobId: 'demo', setUp: 'moon-kit' }, 422, 'job-invalid'],
    [{ jobId: 'demo', draws: 5 }, 400, 'request-invalid'],
  ])('asked with %j is refused', async (payload, status, code) => {
    expect((await explain(payload)).json()).toMatchObject({ status, type: `/problems/${code}` });
  });

  test('without a log from before says so', async () => {
    const jobId = await makeJob(server.app);
    const answer = (await explain({ jobId })).json();
    expect(answer).toMatchObject({
      status: 422,
      type: '/problems/log-not-usable',
      problems: [{ path: 'before' }],
    });
  });
});
