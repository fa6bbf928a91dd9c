import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Prediction } from '@standstill/workshop';
import { jobDocument, makeJob, serverUnderTest } from '../server.testing.ts';
import type { ServerUnderTest } from '../server.testing.ts';

let server: ServerUnderTest;
let id: string;
beforeAll(async () => {
  server = await serverUnderTest();
  id = await makeJob(server.app);
});
afterAll(() => server.stop());

const predict = (payload: object) => server.app.inject({ method: 'POST', url: '/api/predictions', payload });
const few = { draws: 20, seed: 7 };
const predictAt = async (options: object) =>
  (await predict({ jobId: id, options: { ...few, ...options } })).json<Prediction>();

describe('a prediction', () => {
  test('of a kept job is that of its document', async () => {
    const kept = await predict({ jobId: id, options: few });
    const sent = await predict({ document: jobDocument(), options: few });
    expect(kept.statusCode).toBe(200);
    expect(kept.json()).toEqual(sent.json());
    expect(kept.json()).toMatchObject({ kind: 'prediction', version: 1, draws: 20, seed: 7 });
  });

  test('is made at the speed and force asked for', async () => {
    const slow = await predictAt({ speed_m_s: 15 });
    const fast = await predictAt({ speed_m_s: 30, pedalForce_N: 500 });
    expect([slow.speed_m_s, fast.speed_m_s, fast.pedalForce_N]).toEqual([15, 30, 500]);
    expect(slow.setUps[0]?.distance_m.value).toBeLessThan(fast.setUps[0]?.distance_m.value ?? 0);
  });

  test('keeps nothing', async () => {
    await predict({ document: jobDocument('Not kept'), options: few });
    expect((await server.store.listJobs()).map(({ title }) => title)).toEqual(['Long pedal']);
  });

  test.each([
    [{}, 400, 'request-invalid'],
    [{ jobId: 'x', document: {} }, 400, 'request-invalid'],
    [{ jobId: 'nobody' }, 404, 'job-not-found'],
    [{ document: { title: 'x' } }, 422, 'job-invalid'],
    [{ document: null }, 422, 'job-invalid'],
    [{ jobId: 'x', options: { speed: 3 } }, 400, 'request-invalid'],
    [{ jobId: 'x', options: { speed_m_s: -1 } }, 400, 'request-invalid'],
    [{ jobId: 'x', options: { draws: 1e9 } }, 400, 'request-invalid'],
  ])('of %j is refused', async (payload, status, code) => {
    expect((await predict(payload)).json()).toMatchObject({ status, type: `/problems/${code}` });
  });

  test('of a set-up that the job does not have names those it has', async () => {
    const answer = await predict({ jobId: id, options: { ...few, setUps: ['moon-kit'] } });
    expect(answer.json()).toMatchObject({
      status: 422,
      problems: [{ code: 'unknown-set-up', found: '"moon-kit"' }],
    });
  });

  test('of a car that does not stop says so', async () => {
    const answer = await predict({ jobId: id, options: { ...few, pedalForce_N: 0.001 } });
    expect(answer.json()).toMatchObject({ status: 422, type: '/problems/job-invalid' });
  });
});
