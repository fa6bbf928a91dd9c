import { handedOver, newJobDocument, predict, readJobDocument, replyToDraws } from '@standstill/workshop';
import { predictionFrom, predictionRequest } from '@standstill/workshop';
import type { DrawMessage } from '@standstill/workshop';
import { describe, expect, it, vi } from 'vitest';
import type { Asks } from '../../worker/protocol.ts';
import { countOfWorkers, handsOf } from './draw-workers.ts';
import type { LaneWorker } from './lane.ts';
import { predictOnWorkers, type PredictBy } from './predict-on-workers.ts';

const document = { ...newJobDocument('Drawn by workers'), runs: [] };
const reading = readJobDocument(document);
if (!reading.ok) throw new Error('a new job is not a job');
const { job } = reading;
const options = { units: 'us', draws: 60 } as const;
const question = { document, units: 'us' } as const;
const expected = predict(job, options);

/** A draw worker in this thread: what goes in and what comes out is cloned and handed over as by a real one. */
function drawWorker(terminate: () => void = () => {}): LaneWorker {
  const reply = replyToDraws();
  const worker: LaneWorker = {
    onmessage: null,
    onerror: null,
    terminate,
    postMessage: (message) => {
      const answer = reply(structuredClone(message) as DrawMessage);
      const data: unknown = structuredClone(answer, { transfer: handedOver(answer) });
      setTimeout(() => worker.onmessage?.({ data } as MessageEvent), 0);
    },
  };
  return worker;
}

function brokenWorker(): LaneWorker {
  const worker: LaneWorker = {
    ...drawWorker(),
    postMessage: () => setTimeout(() => worker.onerror?.({ message: 'no memory' } as ErrorEvent), 0),
  };
  return worker;
}

/** The other worker of the page, with fewer draws than usual; notes what it was asked. */
function by(start: () => LaneWorker, workers = 2): PredictBy & { readonly asked: string[] } {
  const asked: string[] = [];
  const answer = (kind: string, ask: unknown): unknown => {
    asked.push(kind);
    if (kind === 'predict') return { ok: true, prediction: expected };
    if (kind === 'open-prediction')
      return { ok: true, job, options, request: predictionRequest(job, options) };
    const { drawn } = ask as Asks['finish-prediction']['ask'];
    return predictionFrom(job, options, drawn);
  };
  const ask = async (kind: string, what: unknown): Promise<unknown> => Promise.resolve(answer(kind, what));
  return { ask: ask as PredictBy['ask'], pool: { hands: handsOf(workers, start) }, asked };
}

const nobody = new AbortController().signal;

describe('a prediction on workers', () => {
  it('is what one worker gives, and tells how far it is', async () => {
    const told: number[] = [];
    const how = by(() => drawWorker());
    const predicted = await predictOnWorkers(question, nobody, (done) => told.push(done), how);
    expect(predicted).toStrictEqual({ ok: true, prediction: expected });
    expect(told).toEqual([15, 30, 45, 60]);
    expect(how.asked).toEqual(['open-prediction', 'finish-prediction']);
  });

  it('is asked of one worker where there is only one', async () => {
    const how = by(() => drawWorker(), 1);
    expect(await predictOnWorkers(question, nobody, undefined, how)).toMatchObject({ ok: true });
    expect(how.asked).toEqual(['predict']);
  });

  it('falls back to one worker where the others break', async () => {
    const warned = vi.spyOn(console, 'warn').mockImplementation(() => {});
    const how = by(brokenWorker);
    const predicted = await predictOnWorkers(question, nobody, undefined, how);
    expect(predicted).toStrictEqual({ ok: true, prediction: expected });
    expect(how.asked).toEqual(['open-prediction', 'predict']);
    expect(String(warned.mock.calls[0]?.[1])).toContain('no memory');
    warned.mockRestore();
  });

  it('is called off without ending a worker', async () => {
    const abort = new AbortController();
    const ended = vi.fn<() => void>();
    const how = by(() => drawWorker(ended));
    const predicting = predictOnWorkers(question, abort.signal, () => abort.abort(new Error('newer')), how);
    await expect(predicting).rejects.toThrow('newer');
    expect(how.asked).toEqual(['open-prediction']);
    expect(ended).not.toHaveBeenCalled();
  });
});

it.each([
  [undefined, 2],
  [1, 1],
  [2, 2],
  [64, 8],
])('%s cores: %s workers', (cores, workers) => {
  expect(countOfWorkers(cores)).toBe(workers);
});
