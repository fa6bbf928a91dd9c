import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { balanceReport } from '@standstill/workshop';
import { jobDocument, makeJob, serverUnderTest } from '../server.testing.ts';
import type { ServerUnderTest } from '../server.testing.ts';

let server: ServerUnderTest;
let id: string;
beforeAll(async () => {
  server = await serverUnderTest();
  id = await makeJob(server.app);
});
afterAll(() => server.stop());

const balance = (payload: object) => server.app.inject({ method: 'POST', url: '/api/balance', payload });
const few = { draws: 20, seed: 7 };

describe('the balance', () => {
  test('of a kept job is that of its document, in the published shape', async () => {
    const kept = await balance({ jobId: id, options: { ...few, speed_m_s: 40 } });
    const sent = await balance({ document: jobDocument(), options: { ...few, speed_m_s: 40 } });
    expect(kept.statusCode).toBe(200);
    const report = balanceReport.parse(kept.json());
    expect(report).toEqual(sent.json());
    expect([report.speed_m_s, report.draws, report.setUps[0]?.states.length]).toEqual([40, 20, 2]);
  });

  test('is looked at in the states of load that are asked for', async () => {
    const answer = await balance({ jobId: id, options: { ...few, states: ['laden'] } });
    const [first] = balanceReport.parse(answer.json()).setUps;
    expect(first?.states.map(({ state }) => state)).toEqual(['laden']);
  });

  test.each([
    [{}, 400, 'request-invalid'],
    [{ jobId: 'nobody' }, 404, 'job-not-found'],
    [{ document: { title: 'x' } }, 422, 'job-invalid'],
    [{ jobId: 'x', options: { states: ['towing'] } }, 400, 'request-invalid'],
    [{ jobId: 'x', options: { pedalForce_N: 300 } }, 400, 'request-invalid'],
    [{ jobId: 'x', options: { draws: 5001 } }, 400, 'request-invalid'],
  ])('of %j is refused', async (payload, status, code) => {
    expect((await balance(payload)).json()).toMatchObject({ status, type: `/problems/${code}` });
  });

  test('of a set-up that the job does not have names those it has', async () => {
    const answer = await balance({ jobId: id, options: { ...few, setUps: ['moon-kit'] } });
    expect(answer.json()).toMatchObject({
      status: 422,
      problems: [{ code: 'unknown-set-up', path: 'options.setUps', accepted: 'as-found, pads-only' }],
    });
  });
});
