import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { TestPlan } from '@standstill/workshop';
import { demoServer } from '../proof/demo-logs.testing.ts';
import type { DemoServer } from '../proof/demo-logs.testing.ts';

let server: DemoServer;
beforeAll(async () => {
  server = await demoServer();
});
afterAll(() => server.stop());

const plan = (payload: object) => server.app.inject({ method: 'POST', url: '/api/plans', payload });

describe('a plan of a test', () => {
  test('needs no job: more stops for a smaller difference, and says what was assumed', async () => {
    const of = async (resolution_m: number) =>
      (await plan({ resolution_m, spread_m: 0.6, nominalSpeed_m_s: 26.8 })).json<TestPlan>();
    const [coarse, fine] = [await of(2), await of(0.5)];
    expect(fine.runsPerSet).toBeGreaterThan(coarse.runsPerSet);
    expect(fine).toMatchObject({
      kind: 'test-plan',
      spreadOrigin: 'stated',
      coolDown: { origin: 'assumed' },
    });
    expect(fine.runs.at(-1)).toMatchObject({ set: 'repeat', purpose: 'counted' });
  });

  test('takes the spread from kept stops and the cool-down from the brakes of the job', async () => {
    const answer = await plan({
      jobId: 'demo',
      from: server.before,
      resolution_m: 1,
      withRepeat: false,
      draws: 5,
    });
    expect(answer.json<TestPlan>()).toMatchObject({
      spreadOrigin: 'measured',
      coolDown: { origin: 'model' },
      withRepeat: false,
    });
  });

  test.each([
    [{ resolution_m: -1 }, 400, 'request-invalid'],
    [{ from: ['log-1'] }, 400, 'request-invalid'],
    [{ jobId: 'demo', from: ['log-1'], spread_m: 1 }, 400, 'request-invalid'],
    [{ startTemperature_C: { low: 100, high: 60 } }, 400, 'request-invalid'],
    [{ jobId: 'nobody' }, 404, 'job-not-found'],
    [{ jobId: 'demo', from: ['nothing'] }, 404, 'log-not-found'],
    [{ jobId: 'demo', setUps: ['moon-kit'] }, 422, 'job-invalid'],
  ])('asked with %j is refused', async (payload, status, code) => {
    expect((await plan(payload)).json()).toMatchObject({ status, type: `/problems/${code}` });
  });
});
