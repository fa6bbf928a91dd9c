import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { pedalReport } from '@standstill/workshop';
import { jobDocument, makeJob, serverUnderTest } from '../server.testing.ts';
import type { ServerUnderTest } from '../server.testing.ts';

let server: ServerUnderTest;
let id: string;
beforeAll(async () => {
  server = await serverUnderTest();
  id = await makeJob(server.app);
});
afterAll(() => server.stop());

const pedal = (payload: object) => server.app.inject({ method: 'POST', url: '/api/pedal', payload });
const measured = { engine: 'off', points: '20 N 40 mm; 60 N 47 mm; 150 N 54 mm; 400 N 68 mm' };
const few = { draws: 20, seed: 7 };

describe('the pedal', () => {
  test('of a kept job is that of its document, in the published shape, with measured pushes', async () => {
    const kept = await pedal({ jobId: id, options: { ...few, measured, pedalForce_N: 300 } });
    const sent = await pedal({ document: jobDocument(), options: { ...few, measured, pedalForce_N: 300 } });
    expect(kept.statusCode).toBe(200);
    const report = pedalReport.parse(kept.json());
    expect(report).toEqual(sent.json());
    expect([report.draws, report.pedalForce_N, report.measured?.points.length]).toEqual([20, 300, 4]);
  });

  test.each([
    [{}, 400, 'request-invalid'],
    [{ jobId: 'nobody' }, 404, 'job-not-found'],
    [{ document: { title: 'x' } }, 422, 'job-invalid'],
    [{ jobId: 'x', options: { measured: { engine: 'stalled', points: 'x' } } }, 400, 'request-invalid'],
  ])('of %j is refused', async (payload, status, code) => {
    expect((await pedal(payload)).json()).toMatchObject({ status, type: `/problems/${code}` });
  });

  test('refuses pushes that say nothing, each with what is accepted', async () => {
    const points = '20 N 40 mm; 60 N';
    const answer = await pedal({ jobId: id, options: { ...few, measured: { ...measured, points } } });
    expect(answer.statusCode).toBe(422);
    expect(JSON.stringify(answer.json())).toContain('20 lbf 1.1 in');
    const unknown = await pedal({ jobId: id, options: { ...few, setUp: 'best' } });
    expect(unknown.json()).toMatchObject({ status: 422, problems: [{ path: 'options.setUp' }] });
  });
});
