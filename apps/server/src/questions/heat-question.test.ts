import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { heatReport } from '@standstill/workshop';
import { jobDocument, makeJob, serverUnderTest } from '../server.testing.ts';
import type { ServerUnderTest } from '../server.testing.ts';

let server: ServerUnderTest;
let id: string;
beforeAll(async () => {
  server = await serverUnderTest();
  id = await makeJob(server.app);
});
afterAll(() => server.stop());

const heat = (payload: object) => server.app.inject({ method: 'POST', url: '/api/heat', payload });
const few = { draws: 2, seed: 7 };
const heatOf = async (options: object) =>
  heatReport.parse((await heat({ jobId: id, options: { ...few, ...options } })).json());

describe('the heat', () => {
  test('of a kept job is that of its document, in the published shape', async () => {
    const options = { ...few, count: 3, interval_s: 30, speed_m_s: 25, pedalForce_N: 250 };
    const kept = await heat({ jobId: id, options });
    const sent = await heat({ document: jobDocument(), options });
    expect(kept.statusCode).toBe(200);
    const report = heatReport.parse(kept.json());
    expect(report).toEqual(sent.json());
    expect([report.schedule, report.speed_m_s, report.pedalForce_N, report.draws]).toEqual([
      'stops',
      25,
      250,
      2,
    ]);
    expect(report.setUps[0]?.stops.length).toBe(3);
  });

  test('follows interval, drop, grade and the share of the brakes', async () => {
    const hottest = async (options: object) => (await heatOf(options)).setUps[0]?.front.bulk_C.value ?? NaN;
    const descent = { schedule: 'descent', speed_m_s: 14, drop_m: 300, grade: 0.08, brakeShare: 0.5 };
    const usual = await hottest(descent);
    expect(await hottest({ ...descent, drop_m: 600 })).toBeGreaterThan(usual + 5);
    expect(await hottest({ ...descent, grade: 0.12 })).toBeGreaterThan(usual + 5);
    expect(await hottest({ ...descent, brakeShare: 1 })).toBeGreaterThan(usual + 5);
    const often = await hottest({ count: 4, interval_s: 20 });
    expect(often).toBeGreaterThan(await hottest({ count: 4, interval_s: 300 }));
  });

  test('of laps takes their points in any unit of speed and time', async () => {
    const report = await heatOf({ points: '75 mph, 30 mph, 22 s; 60 mph, 25 mph, 18 s', count: 2 });
    expect([report.schedule, report.setUps[0]?.stops.length]).toEqual(['laps', 4]);
  });

  test.each([
    [{}, 400, 'request-invalid'],
    [{ jobId: 'nobody' }, 404, 'job-not-found'],
    [{ document: { title: 'x' } }, 422, 'job-invalid'],
    [{ jobId: 'x', options: { draws: 1001 } }, 400, 'request-invalid'],
    [{ jobId: 'x', options: { interval: 3 } }, 400, 'request-invalid'],
    [{ jobId: 'x', options: { schedule: 'picnic' } }, 400, 'request-invalid'],
    [{ jobId: 'x', options: { schedule: 'descent', grade: 3 } }, 400, 'request-invalid'],
  ])('of %j is refused', async (payload, status, code) => {
    expect((await heat(payload)).json()).toMatchObject({ status, type: `/problems/${code}` });
  });

  test.each([
    [{ schedule: 'burnish', drop_m: 300 }, 'body.options.drop_m', 'may be said: nothing'],
    [{ drop_m: 300 }, 'body.options.drop_m', 'speed_m_s, pedalForce_N, count, interval_s'],
    [{ schedule: 'laps' }, 'body.options.points', 'braking points of a lap'],
  ])('with %j, which means nothing, is refused at its place', async (options, path, words) => {
    const answer = (await heat({ jobId: id, options })).json<{ problems: unknown[] }>();
    expect(answer).toMatchObject({ status: 400, problems: [{ path }] });
    expect(answer.problems).toMatchObject([{ accepted: expect.stringContaining(words) as unknown }]);
  });

  test('of points that can not be read says which and what is accepted', async () => {
    const answer = await heat({ jobId: id, options: { points: '75 mph, 30 mph' } });
    const problem = { code: 'lap-not-read', path: 'points[0].next', accepted: expect.any(String) as unknown };
    expect(answer.json()).toMatchObject({ status: 422, problems: [problem] });
  });

  test('beyond the formulas is refused in words', async () => {
    const answer = await heat({ jobId: id, options: { ...few, schedule: 'descent', speed_m_s: 90 } });
    expect(answer.json()).toMatchObject({ status: 422, problems: [{ path: 'options' }] });
    expect(answer.body).toContain('90 m/s');
  });
});
