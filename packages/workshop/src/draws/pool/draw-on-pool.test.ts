import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../../job/example-job.testing.ts';
import { readJob } from '../../job/reading/read-job.ts';
import { predictOnPool } from '../../predict/predict-on-pool.ts';
import { predict } from '../../predict/predict.ts';
import { drawRange } from '../draw-range.ts';
import type { DrawRequest } from '../draw-request.ts';
import type { DrawMessage, DrawReply } from './draw-message.ts';
import { drawOnPool } from './draw-on-pool.ts';
import { remoteHand } from './remote-hand.ts';
import { handedOver, replyToDraws } from './reply-to-draws.ts';

const reading = readJob(exampleJobText, { file: 'job.yaml' });
if (!reading.ok) throw new Error('the example job is not a job');
const { job } = reading;
const setUpIds = ['as-found', 'front-kit'];
const request: DrawRequest = { question: 'distance', setUpIds, overrides: {}, draws: 2500, seed: 5 };
const whole = drawRange(job, request, 0, 2500);

/** A far end that is a copy away, as a thread is: what is sent and what comes back is cloned, handed over or not at all. */
function farEnd(): (message: DrawMessage) => Promise<DrawReply> {
  const reply = replyToDraws();
  return async (message) => {
    await Promise.resolve();
    const answer = reply(structuredClone(message));
    return structuredClone(answer, { transfer: handedOver(answer) });
  };
}

function poolOf(hands: number) {
  return { hands: Array.from({ length: hands }, () => remoteHand(farEnd())) };
}

describe('a pool', () => {
  it.each([
    [1, [834, 1668, 2500]],
    [2, [625, 1250, 1875, 2500]],
    [5, [500, 1000, 1500, 2000, 2500]],
  ])('of %i hands draws the same numbers as one pass, and says how far it is', async (hands, steps) => {
    const told: number[] = [];
    const drawn = await drawOnPool(job, request, poolOf(hands), { onProgress: (done) => told.push(done) });
    expect(drawn).toStrictEqual(whole);
    expect(told).toEqual(steps);
  });

  it('draws one request after the other with the same hands', async () => {
    const pool = poolOf(2);
    const other = { ...request, seed: 6 };
    expect(await drawOnPool(job, other, pool)).toStrictEqual(drawRange(job, other, 0, 2500));
    expect(await drawOnPool(job, request, pool)).toStrictEqual(whole);
  });

  it('predicts what is predicted without it', async () => {
    const options = { draws: 130, seed: 3, units: 'metric' } as const;
    expect(await predictOnPool(job, options, poolOf(2))).toStrictEqual(predict(job, options));
  });
});

describe('trouble in a pool', () => {
  it('hands out nothing more once it is called off', async () => {
    let sent = 0;
    const send = farEnd();
    const counting = remoteHand(
      (message) => ((sent += message.kind === 'draw-range' ? 1 : 0), send(message)),
    );
    const drawing = drawOnPool(job, request, { hands: [counting] }, { isCalledOff: () => sent === 1 });
    await expect(drawing).rejects.toThrow('called off');
    expect(sent).toBe(1);
  });

  it('fails with what its hand fails with, and hands out nothing more', async () => {
    let sent = 0;
    const send = farEnd();
    const good = remoteHand((message) => ((sent += 1), send(message)));
    const broken = remoteHand(() => Promise.reject(new Error('the worker ran out of memory')));
    await expect(drawOnPool(job, request, { hands: [broken, good] })).rejects.toThrow('out of memory');
    const before = sent;
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(sent).toBeLessThanOrEqual(before + 1); // the range that was on its way
  });

  it('says what a far end could not do', async () => {
    const unknown = { ...request, setUpIds: ['as-found', 'no such set-up'] };
    await expect(drawOnPool(job, unknown, poolOf(1))).rejects.toThrow(
      'a worker failed at its draws: the job has no set-up "no such set-up"',
    );
  });

  it('does not take the ranges of one request for those of another', () => {
    const reply = replyToDraws();
    reply({ kind: 'open-draws', run: 1, job, request });
    expect(reply({ kind: 'draw-range', run: 2, from: 0, to: 1 })).toMatchObject({ ok: false });
  });
});
