import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { FadeRefusal, FadeReport } from '@standstill/workshop';
import { demoServer } from '../proof/demo-logs.testing.ts';
import type { DemoServer } from '../proof/demo-logs.testing.ts';

let server: DemoServer;
beforeAll(async () => {
  server = await demoServer();
});
afterAll(() => server.stop());

const fade = (payload: object, query = '') =>
  server.app.inject({ method: 'POST', url: `/api/fades${query}`, payload });

describe('stops of kept logs in a row', () => {
  test('say whether they get longer, beside what the model expects of their set-up', async () => {
    const answer = await fade({ jobId: 'demo', logs: server.before, draws: 20 });
    const report = answer.json<FadeReport>();
    expect(answer.statusCode).toBe(200);
    expect(report.kind).toBe('fade-report');
    expect(report.set.stops).toHaveLength(7);
    expect(report.set.slope_m_per_stop?.low).toBeLessThan(report.set.slope_m_per_stop?.high ?? 0);
    expect(report.expectation).toMatchObject({ setUp: 'as-found' });
    expect(report.expectation?.temperatures_C).toHaveLength(7);
  });

  test('are set against a second row, and drawn', async () => {
    const asked = {
      jobId: 'demo',
      logs: server.before,
      against: server.after,
      name: 'old',
      againstName: 'new',
      draws: 20,
    };
    const report = (await fade(asked)).json<FadeReport>();
    expect([report.set.name, report.against?.name]).toEqual(['old', 'new']);
    expect(report.slopeDifference_m_per_stop).not.toBeNull();
    const picture = await fade(asked, '?as=svg');
    expect(picture.headers['content-type']).toBe('image/svg+xml; charset=utf-8');
    expect(picture.body).toContain('a stop of old');
  });

  test('of one log twice are refused in a sentence, with nothing to draw', async () => {
    const asked = { jobId: 'demo', logs: server.before, against: server.before };
    const refusal = (await fade(asked)).json<FadeRefusal>();
    expect(refusal).toMatchObject({ kind: 'fade-refusal', code: 'same-log' });
    expect((await fade(asked, '?as=svg')).json()).toMatchObject({
      status: 422,
      type: '/problems/nothing-to-draw',
    });
  });

  test.each([
    [{ jobId: 'demo' }, 400, 'request-invalid'],
    [{ jobId: 'demo', logs: ['nothing'] }, 404, 'log-not-found'],
    [{ jobId: 'nobody', logs: ['x'] }, 404, 'job-not-found'],
    [{ jobId: 'demo', logs: ['log-1'], draws: 1e6 }, 400, 'request-invalid'],
    [{ jobId: 'demo', logs: ['log-1'], setUp: 'moon-kit' }, 422, 'job-invalid'],
  ])('asked with %j are refused', async (payload, status, code) => {
    expect((await fade(payload)).json()).toMatchObject({ status, type: `/problems/${code}` });
  });
});
