import { describe, expect, it } from 'vitest';
import { openLane, type LaneWorker } from './lane.ts';

/** A worker that answers when told, and remembers what happened to it. */
function fakeWorkers() {
  const started: (LaneWorker & { got: unknown[]; ended: boolean; answer: (data: unknown) => void })[] = [];
  const start = (): LaneWorker => {
    const worker = {
      got: [] as unknown[],
      ended: false,
      onmessage: null as LaneWorker['onmessage'],
      onerror: null as LaneWorker['onerror'],
      postMessage: (message: unknown) => void worker.got.push(message),
      terminate: () => void (worker.ended = true),
      answer: (data: unknown) => worker.onmessage?.({ data } as MessageEvent),
    };
    started.push(worker);
    return worker;
  };
  return { started, start };
}

describe('a worker lane', () => {
  it('asks one request at a time and answers in order', async () => {
    const { started, start } = fakeWorkers();
    const lane = openLane(start);
    const first = lane.ask('a');
    const second = lane.ask('b');
    expect(started[0]?.got).toEqual(['a']);
    started[0]?.answer(1);
    expect(await first).toBe(1);
    expect(started[0]?.got).toEqual(['a', 'b']);
    started[0]?.answer(2);
    expect(await second).toBe(2);
    expect(started).toHaveLength(1);
  });

  it('a superseded request that waits never reaches the worker', async () => {
    const { started, start } = fakeWorkers();
    const lane = openLane(start);
    const running = lane.ask('a');
    const abort = new AbortController();
    const superseded = lane.ask('b', abort.signal);
    abort.abort(new Error('superseded'));
    await expect(superseded).rejects.toThrow('superseded');
    const last = lane.ask('c');
    started[0]?.answer(1);
    await running;
    started[0]?.answer(3);
    expect(await last).toBe(3);
    expect(started[0]?.got).toEqual(['a', 'c']);
  });

  it('a superseded request that runs ends its worker, and the next one gets a fresh worker', async () => {
    const { started, start } = fakeWorkers();
    const lane = openLane(start);
    const abort = new AbortController();
    const running = lane.ask('a', abort.signal);
    const next = lane.ask('b');
    abort.abort(new Error('superseded'));
    await expect(running).rejects.toThrow('superseded');
    expect(started[0]?.ended).toBe(true);
    expect(started[1]?.got).toEqual(['b']);
    started[1]?.answer(2);
    expect(await next).toBe(2);
  });

  it('a worker that breaks fails its request only', async () => {
    const { started, start } = fakeWorkers();
    const lane = openLane(start);
    const first = lane.ask('a');
    const second = lane.ask('b');
    started[0]?.onerror?.({ message: 'no memory' } as ErrorEvent);
    await expect(first).rejects.toThrow('no memory');
    started[1]?.answer(2);
    expect(await second).toBe(2);
  });
});
