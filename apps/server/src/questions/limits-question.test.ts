import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { limitsReport } from '@standstill/workshop';
import { jobDocument, makeJob, serverUnderTest } from '../server.testing.ts';
import type { ServerUnderTest } from '../server.testing.ts';

let server: ServerUnderTest;
let id: string;
beforeAll(async () => {
  server = await serverUnderTest();
  id = await makeJob(server.app);
});
afterAll(() => server.stop());

const limits = (payload: object) => server.app.inject({ method: 'POST', url: '/api/limits', payload });
const few = { draws: 20, seed: 7, sampling: 'sobol' };

describe('the limits', () => {
  test('of a kept job are those of its document, in the published shape', async () => {
    const kept = await limits({ jobId: id, options: few });
    const sent = await limits({ document: jobDocument(), options: few });
    expect(kept.statusCode).toBe(200);
    expect(limitsReport.parse(kept.json())).toEqual(sent.json());
    expect(kept.json()).toMatchObject({ kind: 'limits-report', draws: 20, seed: 7, sampling: 'sobol' });
  });

  test.each([
    [{}, 400, 'request-invalid'],
    [{ jobId: 'nobody' }, 404, 'job-not-found'],
    [{ document: { title: 'x' } }, 422, 'job-invalid'],
    [{ jobId: 'x', options: { sampling: 'dice' } }, 400, 'request-invalid'],
  ])('of %j are refused', async (payload, status, code) => {
    expect((await limits(payload)).json()).toMatchObject({ status, type: `/problems/${code}` });
  });
});
