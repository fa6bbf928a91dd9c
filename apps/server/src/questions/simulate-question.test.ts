import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { simulationReport } from '@standstill/workshop';
import { jobDocument, makeJob, serverUnderTest } from '../server.testing.ts';
import type { ServerUnderTest } from '../server.testing.ts';

let server: ServerUnderTest;
let id: string;
beforeAll(async () => {
  server = await serverUnderTest();
  id = await makeJob(server.app);
});
afterAll(() => server.stop());

const simulate = (payload: object) => server.app.inject({ method: 'POST', url: '/api/simulate', payload });
const few = { draws: 2, seed: 7, speed_m_s: 15 };
const simulated = async (options: object) =>
  simulationReport.parse((await simulate({ jobId: id, options: { ...few, ...options } })).json());

describe('a simulation', () => {
  test('of a kept job is that of its document, in the published shape', async () => {
    const kept = await simulate({ jobId: id, options: few });
    const sent = await simulate({ document: jobDocument(), options: few });
    expect(kept.statusCode).toBe(200);
    const report = simulationReport.parse(kept.json());
    expect(report).toEqual(sent.json());
    expect([report.speed_m_s, report.draws, report.setUps[0]?.trace]).toEqual([15, 2, null]);
  });

  test('seeks a deceleration, and has the stop over time where it is wanted', async () => {
    const report = await simulated({ deceleration_m_s2: 4, trace: true });
    expect(report.soughtDeceleration_m_s2).toBe(4);
    const trace = report.setUps[0]?.trace;
    expect(trace?.speed_m_s[0]).toBeCloseTo(15, 6);
    expect(trace?.speed_m_s.at(-1)).toBeLessThan(0.1);
  });

  test('keeps a foot down whatever locks', async () => {
    const report = await simulated({ lockedWheels: true, pedalForce_N: 800 });
    expect([report.lockedWheels, report.pedalForce_N]).toEqual([true, 800]);
  });

  test.each([
    [{}, 400, 'request-invalid'],
    [{ jobId: 'nobody' }, 404, 'job-not-found'],
    [{ document: { title: 'x' } }, 422, 'job-invalid'],
    [{ jobId: 'x', options: { deceleration_m_s2: 0 } }, 400, 'request-invalid'],
    [{ jobId: 'x', options: { lockedWheels: 'yes' } }, 400, 'request-invalid'],
    [{ jobId: 'x', options: { draws: 1001 } }, 400, 'request-invalid'],
  ])('of %j is refused', async (payload, status, code) => {
    expect((await simulate(payload)).json()).toMatchObject({ status, type: `/problems/${code}` });
  });

  test('of a car that does not stop says so', async () => {
    const answer = await simulate({ jobId: id, options: { ...few, pedalForce_N: 0.001 } });
    expect(answer.json()).toMatchObject({ status: 422, problems: [{ path: 'options' }] });
  });
});
